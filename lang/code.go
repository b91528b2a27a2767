package lang

import "ovillo/lang/diag"

// The codes of what can be wrong with the writing. Their wording is in lang/diag/catalog_writing.go.
const (
	// The file as a whole.
	codeBigFile  diag.Code = "OV101"
	codeEncoding diag.Code = "OV102"
	codeDepth    diag.Code = "OV103"
	codeLong     diag.Code = "OV104"
	codeMore     diag.Code = "OV105"

	codeManyLines  diag.Code = "OV163"
	codeLongName   diag.Code = "OV164"
	codeLongText   diag.Code = "OV165"
	codeLongNumber diag.Code = "OV166"

	// The files that a source uses.
	codeUseName    diag.Code = "OV106"
	codeUseMissing diag.Code = "OV107"
	codeUseRead    diag.Code = "OV108"
	codeUseLarge   diag.Code = "OV109"
	codeUseCycle   diag.Code = "OV110"
	codeUseMany    diag.Code = "OV161"
	codeNotShared  diag.Code = "OV162"

	// Lines and blocks.
	codeUnknown    diag.Code = "OV111"
	codeAstray     diag.Code = "OV112"
	codeNoRow      diag.Code = "OV113"
	codeMissingEnd diag.Code = "OV114"
	codeStrayEnd   diag.Code = "OV115"
	codeOpenAtEnd  diag.Code = "OV116"
	codeRawAstray  diag.Code = "OV117"
	codeNoBar      diag.Code = "OV118"
	codeOtherWord  diag.Code = "OV119"
	codeForeign    diag.Code = "OV159"
	codeTongue     diag.Code = "OV160"

	// Signs.
	codeOpenBracket diag.Code = "OV121"
	codeBadBracket  diag.Code = "OV122"
	codeUnfinished  diag.Code = "OV123"
	codeGlued       diag.Code = "OV124"
	codeOpenQuote   diag.Code = "OV125"
	codeCurlyQuote  diag.Code = "OV126"
	codeSemicolon   diag.Code = "OV127"
	codeBrace       diag.Code = "OV128"
	codeStraySign   diag.Code = "OV129"
	codeDecimal     diag.Code = "OV130"

	// What would have to come next.
	codeFit      diag.Code = "OV131"
	codeWords    diag.Code = "OV132"
	codeName     diag.Code = "OV133"
	codeReserved diag.Code = "OV134"
	codeNumber   diag.Code = "OV135"
	codeValue    diag.Code = "OV136"
	codeText     diag.Code = "OV137"
	codeLanguage diag.Code = "OV138"
	codePlace    diag.Code = "OV139"
	codeStitch   diag.Code = "OV140"
	codeList     diag.Code = "OV141"
	codeColon    diag.Code = "OV142"
	codeComma    diag.Code = "OV143"
	codeBut      diag.Code = "OV144"
	codeSizes    diag.Code = "OV145"
	codePoint    diag.Code = "OV146"

	// Slips of the pen in rows.
	codeNoPlace  diag.Code = "OV151"
	codeHowOften diag.Code = "OV152"
	codeBehind   diag.Code = "OV153"
	codeStar     diag.Code = "OV154"
	codeBetween  diag.Code = "OV155"
	codeInNumber diag.Code = "OV156"
	codeBelow    diag.Code = "OV157"
	codeRowName  diag.Code = "OV158"
)
