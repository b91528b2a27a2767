#!/usr/bin/env bash
# Sets a thousand patterns in one call and says how long it took and how much memory. They are the examples under other designers' names;
# every twentieth has lost its last line, so that it does not come out. The files of a hundred are compared with those
# that one processor makes.
#   testdata/bench/many.sh [HOW_MANY]
set -euo pipefail
cd "$(dirname "$0")/../.."
many=${1:-1000}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir "$work/src" "$work/out" "$work/one"
go build -buildvcs=false -o "$work/ovillo" ./cmd/ovillo
cp examples/*.jpg "$work/src/"
i=0 broken=0
while [ "$i" -lt "$many" ]; do
  for f in examples/*.ovillo; do
    [ "$i" -lt "$many" ] || break
    to=$work/src/$(printf 'p%05d.ovillo' "$i")
    sed -E "s/^  (by|de) \"[^\"]*\"/  \1 \"Estudio $i\"/" "$f" >"$to"
    if [ $((i % 20)) -eq 7 ]; then sed -i '$d' "$to"; broken=$((broken + 1)); fi
    i=$((i + 1))
  done
done

run() { # OUT PROCESSORS SOURCES
  local code=0
  (cd "$work" && GOMAXPROCS=$2 /usr/bin/time -f '%e s, %U s of processors, %M kB at most' ./ovillo build "$3" -o "$1/" >"$1.said" 2>"$1.errors") || code=$?
  [ "$code" -eq 1 ] || { tail -5 "$work/$1.errors" >&2; echo "exit code $code, want 1" >&2; exit 1; }
  tail -1 "$work/$1.errors"
}

printf '%s patterns, %s of them broken, %s processors: ' "$many" "$broken" "$(nproc)"
run out "$(nproc)" 'src/*.ovillo'
made=$(find "$work/out" -name '*.pdf' | wc -l)
[ "$made" -eq $((many - broken)) ] || { echo "$made files, want $((many - broken))" >&2; exit 1; }
printf 'the first hundred of them on one processor: '
run one 1 'src/p000*.ovillo'
for f in "$work"/one/*.pdf; do cmp "$f" "$work/out/${f##*/}"; done
