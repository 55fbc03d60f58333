#!/usr/bin/env bash
# Orients the holes of a folder of tables: run.sh [--data DIR] [--out DIR]
set -euo pipefail

demo=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
java=${JAVA_HOME:+$JAVA_HOME/bin/}java

classpath=$(bash "$demo/../classpath.sh")
exec "$java" -cp "$classpath" "$demo/OrientHole.java" --default-data "$demo/data" --default-out "$demo/out" "$@"
