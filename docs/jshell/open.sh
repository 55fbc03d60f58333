#!/usr/bin/env bash
# Opens JShell with the library on its class path and imported; arguments go on to jshell.
set -euo pipefail

here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
jshell=${JAVA_HOME:+$JAVA_HOME/bin/}jshell

classpath=$(bash "$here/../classpath.sh")
exec "$jshell" --class-path "$classpath" --startup DEFAULT --startup "$here/start.jsh" "$@"
