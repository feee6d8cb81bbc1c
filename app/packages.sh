# Debian packages by name, installed only where missing. Sourced by app/start and tests/run.

build_packages=(g++ cmake ninja-build qt6-base-dev libqt6svg6-dev libeigen3-dev)
run_packages=(fonts-b612 fonts-dejavu-core)
test_packages=(libgtest-dev libglpk-dev xvfb xdotool openbox poppler-utils librsvg2-bin)

is_installed() {
  [ "$(dpkg-query -W -f='${db:Status-Status}' "$1" 2>/dev/null)" = installed ]
}

# install_missing PACKAGE...: says what it installs; nothing happens when all is there.
install_missing() {
  local missing=() package
  for package in "$@"; do
    is_installed "$package" || missing+=("$package")
  done
  [ ${#missing[@]} -gt 0 ] || return 0
  echo "Installing: ${missing[*]}"
  local as_root=()
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || { echo "These packages are missing and there is no sudo to install them." >&2; return 1; }
    as_root=(sudo)
  fi
  "${as_root[@]}" apt-get update -q
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "${missing[@]}"
}
