package compile

import (
	"ovillo/compile/caution"
	"ovillo/compile/standard"
	"ovillo/lang/sign"
)

// Prepare reads the tables that every check asks for. A check reads them itself when it comes to them; whoever has a processor to
// spare while a source is read can have it done meanwhile.
func Prepare() {
	standard.BodyTables()
	caution.Rules()
	for _, rows := range claimWords() {
		for _, r := range rows {
			r.words()
		}
	}
	sign.Has(' ')
	standard.Hooks()
	standard.Weights()
}
