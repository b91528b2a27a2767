// Starts `ovillo lsp`, which must be on the path, for files of the language.
'use strict';
const { LanguageClient } = require('vscode-languageclient/node');

let client;

exports.activate = () => {
  client = new LanguageClient('ovillo', 'ovillo', { command: 'ovillo', args: ['lsp'] }, { documentSelector: [{ language: 'ovillo' }] });
  return client.start();
};

exports.deactivate = () => client && client.stop();
