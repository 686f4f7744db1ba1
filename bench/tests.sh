# Sourced by the benchmarks that live among the tests of module plan.

# run_tests_class CLASS ARGUMENTS: compiles the tests of core and plan and runs a class of theirs.
run_tests_class() {
  local path
  path=$(mktemp)
  mvn -q -B -f "$root/pom.xml" -pl core,plan -Djacoco.skip test-compile \
    dependency:build-classpath -Dmdep.outputFile="$path"
  java -cp "$root/plan/target/test-classes:$root/plan/target/classes:$root/core/target/test-classes:$root/core/target/classes:$(cat "$path")" "$@"
  rm -f "$path"
}
