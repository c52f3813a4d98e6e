#!/bin/sh
# Rows in parallel on one machine: GNU parallel cuts a file of JSON lines at line ends and keeps the order, so that the output has the bytes
# of one process. Usage: run.sh IN.ndjson OUT.ndjson PLAN.json [JOBS] [BLOCK]
# LITREBAR is the command, `litrebar` unless set.
set -eu
exec parallel --no-notice --pipepart --arg-file "$1" --block "${5:-16M}" --jobs "${4:-2}" --keep-order --halt now,fail=1 \
  "${LITREBAR:-litrebar} rows - - --plan '$3' --read-as ndjson --write-as ndjson || test \$? -eq 3" > "$2"
