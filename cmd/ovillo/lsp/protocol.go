package lsp

import "encoding/json"

// This file holds the types of the protocol, as far as they are used, by the names of the standard.

// Position is a place between two characters; both count from 0, characters in the encoding that was agreed on.
type Position struct {
	Line      int `json:"line"`
	Character int `json:"character"`
}

// Range goes from a place up to another.
type Range struct {
	Start Position `json:"start"`
	End   Position `json:"end"`
}

// Location is a range of a document.
type Location struct {
	URI   string `json:"uri"`
	Range Range  `json:"range"`
}

// TextEdit puts a text in the place of a range.
type TextEdit struct {
	Range   Range  `json:"range"`
	NewText string `json:"newText"`
}

// WorkspaceEdit is edits of several documents.
type WorkspaceEdit struct {
	Changes map[string][]TextEdit `json:"changes"`
}

type textDocument struct {
	URI     string `json:"uri"`
	Version int    `json:"version"`
	Text    string `json:"text"`
}

// documentParams are the parameters of most requests: a document, and where in it.
type documentParams struct {
	TextDocument textDocument `json:"textDocument"`
	Position     Position     `json:"position"`
	Range        Range        `json:"range"`
	NewName      string       `json:"newName"`
	Context      struct {
		IncludeDeclaration bool     `json:"includeDeclaration"`
		Only               []string `json:"only"`
	} `json:"context"`
}

type changeParams struct {
	TextDocument   textDocument `json:"textDocument"`
	ContentChanges []struct {
		Range *Range `json:"range"` // nil: the text is the whole document
		Text  string `json:"text"`
	} `json:"contentChanges"`
}

// initializeParams is what a client says of itself.
type initializeParams struct {
	Locale       string `json:"locale"`
	Capabilities struct {
		General struct {
			PositionEncodings []string `json:"positionEncodings"`
		} `json:"general"`
		TextDocument struct {
			Hover struct {
				ContentFormat []string `json:"contentFormat"`
			} `json:"hover"`
			PublishDiagnostics struct {
				RelatedInformation bool `json:"relatedInformation"`
			} `json:"publishDiagnostics"`
		} `json:"textDocument"`
	} `json:"capabilities"`
}

// Diagnostic is a finding.
type Diagnostic struct {
	Range    Range     `json:"range"`
	Severity int       `json:"severity"` // 1 error, 2 warning, 3 information
	Code     string    `json:"code"`
	Source   string    `json:"source"`
	Message  string    `json:"message"`
	Related  []Related `json:"relatedInformation,omitempty"`
}

// Related is a place that explains a finding.
type Related struct {
	Location Location `json:"location"`
	Message  string   `json:"message"`
}

type publishParams struct {
	URI         string       `json:"uri"`
	Version     int          `json:"version"`
	Diagnostics []Diagnostic `json:"diagnostics"`
}

// Markup is a text, plain or in Markdown.
type Markup struct {
	Kind  string `json:"kind"`
	Value string `json:"value"`
}

// Hover is what is shown of the thing under the pointer.
type Hover struct {
	Contents Markup `json:"contents"`
	Range    Range  `json:"range"`
}

// CompletionItem is a word that could stand at a place.
type CompletionItem struct {
	Label         string    `json:"label"`
	Kind          int       `json:"kind"`
	Detail        string    `json:"detail,omitempty"`
	Documentation *Markup   `json:"documentation,omitempty"`
	SortText      string    `json:"sortText"`
	FilterText    string    `json:"filterText,omitempty"`
	TextEdit      *TextEdit `json:"textEdit,omitempty"`
}

// Kinds of completion.
const (
	kindFunction = 3
	kindVariable = 6
	kindModule   = 9
	kindUnit     = 11
	kindValue    = 12
	kindKeyword  = 14
	kindColor    = 16
	kindRef      = 18
	kindConstant = 21
)

// CompletionList is what could stand at a place.
type CompletionList struct {
	IsIncomplete bool             `json:"isIncomplete"`
	Items        []CompletionItem `json:"items"`
}

// DocumentSymbol is a thing that a document sets, with those in it.
type DocumentSymbol struct {
	Name           string           `json:"name"`
	Detail         string           `json:"detail,omitempty"`
	Kind           int              `json:"kind"`
	Range          Range            `json:"range"`
	SelectionRange Range            `json:"selectionRange"`
	Children       []DocumentSymbol `json:"children,omitempty"`
}

// InlayHint is a text shown within a line that is not part of it.
type InlayHint struct {
	Position    Position   `json:"position"`
	Label       string     `json:"label"`
	TextEdits   []TextEdit `json:"textEdits,omitempty"` // what writes it into the document
	Tooltip     *Markup    `json:"tooltip,omitempty"`
	PaddingLeft bool       `json:"paddingLeft,omitempty"`
}

// CodeAction is a change that is offered.
type CodeAction struct {
	Title       string         `json:"title"`
	Kind        string         `json:"kind"`
	Diagnostics []Diagnostic   `json:"diagnostics,omitempty"`
	IsPreferred bool           `json:"isPreferred,omitempty"`
	Edit        *WorkspaceEdit `json:"edit,omitempty"`
}

// capabilities is what the server can do.
func capabilities(encoding string) json.RawMessage {
	out, _ := json.Marshal(map[string]any{
		"positionEncoding":           encoding,
		"textDocumentSync":           map[string]any{"openClose": true, "change": 2, "save": map[string]any{"includeText": false}},
		"hoverProvider":              true,
		"completionProvider":         map[string]any{"triggerCharacters": []string{".", "{"}},
		"definitionProvider":         true,
		"referencesProvider":         true,
		"documentHighlightProvider":  true,
		"renameProvider":             map[string]any{"prepareProvider": true},
		"documentSymbolProvider":     true,
		"documentFormattingProvider": true,
		"inlayHintProvider":          true,
		"codeActionProvider":         map[string]any{"codeActionKinds": []string{"quickfix"}},
	})
	return out
}
