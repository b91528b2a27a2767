// Reads a grammar with vscode-textmate and prints the scopes of the lines that come in: one JSON line for each, [[from, to, scopes], …].
'use strict';
const fs = require('fs');
const [grammarPath, textmate, oniguruma] = process.argv.slice(2);
const vsctm = require(textmate), onig = require(oniguruma);
const wasm = fs.readFileSync(oniguruma + '/release/onig.wasm');
const registry = new vsctm.Registry({
  onigLib: onig.loadWASM(wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength)).then(() => ({
    createOnigScanner: patterns => new onig.OnigScanner(patterns),
    createOnigString: s => new onig.OnigString(s),
  })),
  loadGrammar: async () => vsctm.parseRawGrammar(fs.readFileSync(grammarPath, 'utf8'), grammarPath),
});
registry.loadGrammar('source.ovillo').then(grammar => {
  const documents = JSON.parse(fs.readFileSync(0, 'utf8'));
  const out = documents.map(text => {
    let state = vsctm.INITIAL;
    return text.split('\n').map(line => {
      const r = grammar.tokenizeLine(line, state);
      state = r.ruleStack;
      return r.tokens.map(t => ({ from: t.startIndex, to: t.endIndex, scopes: t.scopes.slice(1) }));
    });
  });
  process.stdout.write(JSON.stringify(out));
}).catch(e => { console.error(e); process.exit(1); });
