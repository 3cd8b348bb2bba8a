# What the parts of packaging/package share. Read by them from the root of the tree.
out=$PWD/build/packages
trials=$out/trials
built=${WARDCHALK_PACKAGE_BUILD:-$PWD/build/package}
version=$(sed -n 's/^project(Wardchalk VERSION \([0-9.]*\).*/\1/p' CMakeLists.txt)
mkdir -p "$trials"
rooms=()
trap 'leave' EXIT

say() { echo "package: $*"; }
fail() { echo "package: $*" >&2; exit 1; }

# What is begun is ended, however this ends: fresh systems, displays.
leave() {
  local room
  [ -z "${display_pids:-}" ] || kill $display_pids 2>/dev/null || true
  for room in "${rooms[@]}"; do rm -rf --one-file-system "$room"; done
}

logged() { # name of the log, command…: its whole output goes there; the end of it is shown when it fails
  local log=$trials/$1.log began=$SECONDS failed
  # Not behind || or if, where a function would go on after a step of its own that fails.
  set +e
  (set -e; echo "\$ ${*:2}"; "${@:2}") >"$log" 2>&1
  failed=$?
  set -e
  [ $failed -eq 0 ] || { tail -25 "$log" >&2; fail "$1 failed: see $log"; }
  say "$1: done in $((SECONDS - began)) s"
}

never() { # command…: it must fail
  if "$@"; then echo "should not have been so: $*"; return 1; fi
}

# The programs as they are shipped for Linux: optimized and hardened as Debian wants it, with the compiler's own linker.
build_for_linux() {
  local flags="$(dpkg-buildflags --get CXXFLAGS) $(dpkg-buildflags --get CPPFLAGS)"
  logged configure cmake -S . -B "$built" -G Ninja -DCMAKE_BUILD_TYPE=RelWithDebInfo -DWARDCHALK_UNITY=ON \
    -DWARDCHALK_TESTS=OFF -DCMAKE_CXX_FLAGS="$flags" -DWARDCHALK_HAS_GOLD=OFF -DCMAKE_INSTALL_PREFIX=/usr \
    -DCMAKE_EXE_LINKER_FLAGS="$(DEB_BUILD_MAINT_OPTIONS=hardening=+all dpkg-buildflags --get LDFLAGS)" \
    -DWARDCHALK_ZSH_COMPLETIONS:STRING=share/zsh/vendor-completions
  logged build cmake --build "$built"
}

# A fresh minimal system: its folder is in $room. What every system of its kind begins with is fetched once a day.
fresh() { # name, suite
  local base=$built/systems/$2.tar
  if [ -z "$(find "$base" -mtime -1 2>/dev/null)" ]; then
    mkdir -p "$built/systems"
    logged "system-$2" mmdebstrap --variant=minbase --mode=root --format=tar "$2" "$base.new" "${WARDCHALK_MIRROR:-http://deb.debian.org/debian}"
    mv "$base.new" "$base"
  fi
  room=$(mktemp -d "${TMPDIR:-/tmp}/wardchalk-$1-XXXXXX")
  rooms+=("$room")
  chmod 755 "$room"
  tar -xf "$base" -C "$room"
  cp /etc/resolv.conf "$room/etc/"
}

inside() { # command…: in the fresh system, with none of this one's settings
  unshare --mount --pid --fork --mount-proc="$room/proc" \
    chroot "$room" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LC_ALL=C.UTF-8 DEBIAN_FRONTEND=noninteractive "$@"
}

# A display for the window of a program in a fresh system; programs there reach it by the name of its socket. It has a
# window manager, without which no window is ever active.
open_display() {
  [ -z "${DISPLAY_OPENED:-}" ] || return 0
  local number=77
  while [ -e "/tmp/.X$number-lock" ]; do number=$((number + 1)); done
  Xvfb ":$number" -screen 0 1400x900x24 -nolisten tcp -noreset >"$trials/display.log" 2>&1 &
  display_pids=$!
  export DISPLAY=:$number DISPLAY_OPENED=1
  until xdpyinfo >/dev/null 2>&1; do sleep 0.1; done
  openbox >>"$trials/display.log" 2>&1 &
  display_pids="$display_pids $!"
  until xprop -root _NET_SUPPORTING_WM_CHECK 2>/dev/null | grep -q 'window id'; do sleep 0.1; done
}
