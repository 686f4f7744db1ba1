# shellcheck shell=bash disable=SC2015,SC2154
# Sourced by ./sallet and ./check: finds the tools Sallet is built with, installs what it may, and
# knows whether a build is still that of the sources. Expects $root, the folder of the project.

built=$root/.sallet-build

say() { printf '%s\n' "$*" >&2; }

# Ends the script with one sentence.
stop() {
  say "$*"
  exit 1
}

# Sets $java and $java_version (the number before the first dot; 17 when the JDK does not tell).
find_java() {
  if [ -n "${JAVA_HOME:-}" ] && [ -x "$JAVA_HOME/bin/java" ]; then
    java=$JAVA_HOME/bin/java
  else
    java=$(command -v java) || stop "Sallet needs Java 17 or newer: install a JDK, on Debian the package openjdk-17-jdk-headless."
  fi
  java_version=17
  local home release
  home=$(dirname -- "$(dirname -- "$(readlink -f -- "$java")")")
  if [ -r "$home/release" ]; then
    release=$(<"$home/release")
    [[ $release =~ JAVA_VERSION=\"([0-9]+) ]] && java_version=${BASH_REMATCH[1]}
  fi
  [ "$java_version" -ge 17 ] || stop "Sallet needs Java 17 or newer, but $java is Java $java_version."
}

# Java options for a quiet program: no notices of the machine or of native libraries on the screen.
quiet_java_options() {
  java_options=(-XX:+UseSerialGC -Xmx768m -Xlog:disable -XX:-PrintWarnings -Xshare:auto)
  [ "$java_version" -lt 22 ] || java_options+=(--enable-native-access=ALL-UNNAMED)
  [ "$java_version" -lt 23 ] || java_options+=(--sun-misc-unsafe-memory-access=allow)
}

# install_package PACKAGE: from Debian, when root or sudo allows; fails quietly otherwise.
install_package() {
  local as_root=()
  command -v apt-get >/dev/null || return 1
  if [ "$(id -u)" -ne 0 ]; then
    { command -v sudo && sudo -n true; } >/dev/null 2>&1 || return 1
    as_root=(sudo -n)
  fi
  say "Installing the Debian package $1 ..."
  local install=("${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -qq -y --no-install-recommends install "$1")
  "${install[@]}" >/dev/null 2>&1 && return
  "${as_root[@]}" apt-get -qq update >/dev/null 2>&1 || true
  "${install[@]}" >/dev/null 2>&1
}

need_maven() {
  command -v mvn >/dev/null || install_package maven ||
    stop "Sallet is built with Maven 3.8.7 or newer: install it, on Debian the package maven, and try again."
  { [ -n "${JAVA_HOME:-}" ] && [ -x "$JAVA_HOME/bin/javac" ]; } || command -v javac >/dev/null ||
    stop "Sallet is built with a JDK, and this Java has no compiler: install one, on Debian the package openjdk-17-jdk-headless."
}

need_chromium() {
  command -v chromium >/dev/null || command -v chromium-browser >/dev/null || install_package chromium ||
    stop "The page tests need the browser Chromium: install it, on Debian the package chromium, and try again."
}

# fingerprint PATH...: one number for all that lies below the paths, whatever the clock says.
fingerprint() {
  (cd "$root" && { find "$@" -type f -print0 2>/dev/null || true; } | LC_ALL=C sort -z | xargs -0 cksum | cksum | cut -d ' ' -f 1)
}

# Waits until no other run builds here; held until the script ends.
lock_build() {
  mkdir -p "$built" 2>/dev/null && [ -w "$built" ] && [ -w "$root" ] ||
    stop "Sallet has to be built first, but $root cannot be written: copy the folder to a place of yours, or run this once as its owner."
  exec 9>"$built/lock"
  command -v flock >/dev/null || return 0
  flock -n 9 || { say "Waiting for another run that is building Sallet ..." && flock 9; }
}

# maven ARGUMENT...: in the project's folder, its words kept in build.log and shown when it fails.
quiet_maven() {
  if ! (cd "$root" && mvn -q -B -ntp -Dstyle.color=never "$@") >"$built/build.log" 2>&1 9>&-; then
    grep -m 5 '^\[ERROR\]' "$built/build.log" >&2 || tail -n 12 "$built/build.log" >&2
    stop "Sallet could not be built; all that was said is in $built/build.log."
  fi
}
