# A hand at the keyboard and an eye on the screen, for a window of a program that runs somewhere else.

wait_for() { # what it is, command…: until the command succeeds
  local tries
  for ((tries = 0; tries < 1200; tries++)); do
    "${@:2}" >/dev/null 2>&1 && return 0
    sleep 0.1
  done
  import -window root "$trials/waited-in-vain.png" || true
  fail "waited in vain for $1; the screen is in $trials/waited-in-vain.png"
}

window_named() { xdotool search --onlyvisible --name "$1" | tail -1 | grep .; }

has_gone() { ! window_named "$1"; }

# Whether so many pixels of the screen have this colour.
shows() { # colour as "1b 6b 4a", least number
  local count
  count=$(import -window root -depth 8 rgb:- | od -An -v -tx1 -w3 | grep -cF " $1") || true
  [ "${count:-0}" -ge "$2" ]
}

# The green of the flag that stands over nothing but a case that is safe, as ui/theme/board_palette.cpp has it.
safe_green='1b 6b 4a'

look() { # name of the picture, title of the window: shown safe, and then a picture of the screen
  wait_for "a window named $2" window_named "$2"
  wait_for "the green flag of $2" shows "$safe_green" 20000
  import -window root "$trials/$1.png"
  say "picture: $trials/$1.png"
}

# Types the usual case from the first field on, Enter after each entry, and looks for its verdict.
type_case() { # name of the picture
  local window entry
  wait_for 'an empty window' window_named Wardchalk
  window=$(window_named Wardchalk)
  xdotool windowactivate --sync "$window"
  sleep 1
  for entry in '103 cm' '17.2 kg' '' Plover oral '80 mg' 'every 12 h' '' '120 mg/m2/dose' 'every 12 h' '' 'Bench list, p. 4' \
      '' '' liquid '25 mg in 1 mL'; do
    [ -z "$entry" ] || xdotool type --delay 25 "$entry"
    xdotool key Return
    sleep 0.1
  done
  look "$1" Wardchalk
}

# Saves what was typed by the keyboard alone, into a file whose name is typed.
save_case() { # title of the dialog, name as it is typed, the file as this machine names it
  xdotool key ctrl+s
  wait_for "the dialog \"$1\"" window_named "$1"
  sleep 0.5
  xdotool key ctrl+a
  xdotool type --delay 25 "$2"
  xdotool key Return
  wait_for "the file $3" test -s "$3"
  wait_for "the dialog \"$1\" to go" has_gone "$1"  # or the next key would be its own
  xdotool windowactivate --sync "$(window_named Wardchalk)"  # under Wine nothing has the keyboard after it
  sleep 0.5
}
