#!/usr/bin/env bash
# A toolkit include in the core must not compile; the same file without it must.
#   core_has_no_toolkit.sh COMPILER INCLUDE_FOLDERS...
set -eu
compiler=$1
shift
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
flags=(-std=c++20 -fsyntax-only)
for include in "$@"; do flags+=(-I "$include"); done
printf '#include "core/model/layout.h"\nint main() {}\n' > "$folder/plain.cpp"
"$compiler" "${flags[@]}" "$folder/plain.cpp"
for header in QString QtCore/QString QWidget QPainter; do
  printf '#include "core/model/layout.h"\n#include <%s>\nint main() {}\n' "$header" > "$folder/toolkit.cpp"
  if "$compiler" "${flags[@]}" "$folder/toolkit.cpp" 2> "$folder/err"; then
    echo "<$header> compiles with the include folders of the core" >&2
    exit 1
  fi
  grep -q "$header" "$folder/err"
done
