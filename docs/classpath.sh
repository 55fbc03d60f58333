#!/usr/bin/env bash
# Prints the class path of the two modules and what they need, after building them where a source is newer than the jars.
set -euo pipefail

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
core=$root/orientation-core
trace=$root/survey-trace

jar_of() {
    find "$1/target" -maxdepth 1 -name "$2-*.jar" ! -name '*-sources.jar' ! -name '*-javadoc.jar' ! -name '*-tests.jar' \
        2>/dev/null | head -n 1
}

is_stale() {
    local jar
    for jar in "$(jar_of "$core" orientation-core)" "$(jar_of "$trace" survey-trace)"; do
        if [ -z "$jar" ] || [ -n "$(find "$root/pom.xml" "$core/pom.xml" "$trace/pom.xml" "$core/src/main" \
            "$trace/src/main" -newer "$jar" -print -quit)" ]; then
            return 0
        fi
    done
    [ ! -d "$trace/target/lib" ]
}

if is_stale; then
    echo "building orientation-core and survey-trace (the first time takes a minute)" >&2
    if ! told=$(mvn -q -B -f "$root/pom.xml" -pl survey-trace -am package -DskipTests -Dspotless.check.skip \
        -Djacoco.skip -Dmaven.javadoc.skip -Dmaven.source.skip -Denforcer.skip 2>&1); then
        echo "$told" >&2
        exit 1
    fi
    # a jar whose content did not change keeps its old time
    touch "$(jar_of "$core" orientation-core)" "$(jar_of "$trace" survey-trace)"
fi

classpath=$(jar_of "$trace" survey-trace):$(jar_of "$core" orientation-core)
for jar in "$trace"/target/lib/*.jar; do
    classpath=$classpath:$jar
done
echo "$classpath"
