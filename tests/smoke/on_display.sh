#!/usr/bin/env bash
# Runs a program on a virtual display of its own, with a window manager; ends both with it.
set -u
numbers=$(mktemp)
Xvfb -displayfd 3 -screen 0 1600x1000x24 -nolisten tcp 3> "$numbers" > /dev/null 2>&1 &
server=$!
for _ in $(seq 50); do [ -s "$numbers" ] && break; sleep 0.1; done
DISPLAY=:$(cat "$numbers")
export DISPLAY QT_QPA_PLATFORM=xcb
rm -f "$numbers"
openbox > /dev/null 2>&1 &
manager=$!
sleep 1
timeout 120 "$@"
status=$?
kill "$manager" "$server" 2> /dev/null
exit $status
