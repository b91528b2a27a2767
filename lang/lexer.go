package lang

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"ovillo/lang/source"
)

// Tokens cuts a text into tokens. The tokens tile the text; a byte that belongs to nothing becomes a Stray token.
func Tokens(text string) []Token {
	l := &cutter{text: text, tokens: make([]Token, 0, len(text)/3+8)}
	for l.at < len(text) {
		l.next()
	}
	return l.tokens
}

// cutter walks over a text once.
type cutter struct {
	text   string
	tokens []Token
	at     int
	onLine int  // tokens of this line so far that say something
	head   bool // the first of them may stand before a bar
	end    int  // of the text of the line, once it was looked for: see lineEnd
}

// emit closes a token that ends before byte end.
func (l *cutter) emit(k TokenKind, end int) {
	l.tokens = append(l.tokens, Token{k, source.Span{Start: int32(l.at), End: int32(end)}})
	l.at = end
	switch k {
	case LineEnd:
		l.onLine, l.head = 0, false
	case Blank, Comment:
	default:
		l.onLine++
		l.head = l.onLine == 1 && (k == Word || k == Number)
	}
}

func (l *cutter) next() {
	c := l.text[l.at]
	switch {
	case c == '\n':
		l.emit(LineEnd, l.at+1)
	case c == '\r' && strings.HasPrefix(l.text[l.at:], "\r\n"):
		l.emit(LineEnd, l.at+2)
	case l.blank() > 0:
		end := l.at
		for n := l.blank(); n > 0; n = l.blankAt(end) {
			end += n
		}
		l.emit(Blank, end)
	case c == '#':
		l.emit(Comment, l.lineEnd())
	case c == '|' && (l.onLine == 0 || l.head):
		l.emit(Sign, l.at+1)
		if end := l.textEnd(); end > l.at {
			l.emit(Prosaic, end)
		}
	case c == '"':
		l.quoted()
	case isDigit(c):
		l.number()
	case strings.IndexByte("()[],:=+-*/.|%", c) >= 0:
		l.emit(Sign, l.at+1)
	default:
		if end := wordEnd(l.text, l.at); end > l.at {
			l.emit(Word, end)
			return
		}
		_, n := utf8.DecodeRuneInString(l.text[l.at:])
		l.emit(Stray, l.at+n)
	}
}

func (l *cutter) blank() int { return l.blankAt(l.at) }

// blankAt is the length of the blank at a place, 0 if there is none. Texts pasted from a page hold no-break spaces.
func (l *cutter) blankAt(i int) int {
	switch rest := l.text[i:]; {
	case rest == "":
		return 0
	case rest[0] == ' ' || rest[0] == '\t':
		return 1
	case strings.HasPrefix(rest, "\u00a0"):
		return len("\u00a0")
	case i == 0 && strings.HasPrefix(rest, "\ufeff"):
		return len("\ufeff")
	}
	return 0
}

// lineEnd is the end of the line's text, before its line end. It is looked for once a line, since a line may be as long as a file.
func (l *cutter) lineEnd() int {
	if l.at < l.end {
		return l.end
	}
	l.end = len(l.text)
	if n := strings.IndexByte(l.text[l.at:], '\n'); n >= 0 {
		l.end = l.at + n
		if l.end > l.at && l.text[l.end-1] == '\r' {
			l.end--
		}
	}
	return l.end
}

// textEnd is the end of the line's text, before the blanks at its end.
func (l *cutter) textEnd() int {
	return l.at + len(strings.TrimRight(l.text[l.at:l.lineEnd()], " \t\u00a0"))
}

// quoted reads a text in quotes. One that is not closed on its line is stray up to the end of the line.
func (l *cutter) quoted() {
	end := l.lineEnd()
	for i := l.at + 1; i < end; i++ {
		switch l.text[i] {
		case '\\':
			i++
		case '"':
			l.emit(Quoted, i+1)
			return
		}
	}
	l.emit(Stray, l.textEnd())
}

// number reads digits, with a point only between digits. A unit may be glued on (10cm) and is a word of its own; any other
// letters make the whole stray (5dc), since a stitch written so would hide a slip.
func (l *cutter) number() {
	end := digits(l.text, l.at)
	if end+1 < len(l.text) && l.text[end] == '.' && isDigit(l.text[end+1]) {
		end = digits(l.text, end+1)
	}
	glued := wordEnd(l.text, end)
	if glued > end && !isUnit(l.text[end:glued]) {
		l.emit(Stray, glued)
		return
	}
	l.emit(Number, end)
}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }

func digits(text string, i int) int {
	for i < len(text) && isDigit(text[i]) {
		i++
	}
	return i
}

// wordEnd is the end of the word that starts at i: a letter or underscore, then letters, digits, underscores and combining
// marks. It is i if no word starts there.
func wordEnd(text string, start int) int {
	i := start
	for i < len(text) {
		c := text[i]
		if c < utf8.RuneSelf {
			if c != '_' && !('a' <= c && c <= 'z') && !('A' <= c && c <= 'Z') && !(i > start && isDigit(c)) {
				break
			}
			i++
			continue
		}
		r, n := utf8.DecodeRuneInString(text[i:])
		if !unicode.IsLetter(r) && !(i > start && (unicode.IsDigit(r) || unicode.Is(unicode.Mn, r))) {
			break
		}
		i += n
	}
	return i
}
