# Completion of wardchalk-console(1) for bash.
_wardchalk_console() {
  local cur prev words cword
  _init_completion || return
  local commands='check batch references practice mark class'
  local topics='bsa dose-by-bsa dose-by-weight daily-divided safe-range amount-liquid amount-solid reconstitution infusion
                drops dilution dose-rate conversion mixed'
  case $prev in
    --rules) COMPREPLY=($(compgen -W 'exact classroom' -- "$cur")); _filedir json; return ;;
    --format) COMPREPLY=($(compgen -W 'text mathml latex json' -- "$cur")); return ;;
    --asked)
      COMPREPLY=($(compgen -W 'prescriber pharmacist senior-nurse chart weighed-again measured-again label-read-again' \
        -- "$cur"))
      return ;;
    --topic) COMPREPLY=($(compgen -W "$topics" -- "$cur")); return ;;
    --level) COMPREPLY=($(compgen -W '1 2 3' -- "$cur")); return ;;
    --rung) COMPREPLY=($(compgen -W '1 2 3 4' -- "$cur")); return ;;
    --jobs | --count | --seed) return ;;
  esac
  if ((cword == 1)); then
    COMPREPLY=($(compgen -W "$commands --help --version" -- "$cur"))
    return
  fi
  local options files
  case ${words[1]} in
    check) options='--rules --json --format --asked' files='@(wardchalk|json)' ;;
    batch) options='--rules --brief --csv --jobs' files='@(jsonl|ndjson|csv)' ;;
    references) options='--without-refused' files='@(csv|json)' ;;
    practice) options='--topic --level --count --seed --rules --json' files= ;;
    mark) options='--rung --json --lines' files='@(json|jsonl|ndjson)' ;;
    class) options='--csv' files='@(csv)' ;;
    *) return ;;
  esac
  if [[ $cur == -* ]]; then
    COMPREPLY=($(compgen -W "$options --help" -- "$cur"))
  elif [[ $files ]]; then
    _filedir "$files"
  fi
}
complete -F _wardchalk_console wardchalk-console
