# Completion of wardchalk(1) for bash.
_wardchalk() {
  local cur prev words cword
  _init_completion || return
  case $prev in
    --paper) COMPREPLY=($(compgen -W 'a4 letter' -- "$cur")); return ;;
  esac
  if [[ $cur == -* ]]; then
    COMPREPLY=($(compgen -W '--board --picture --sheet --practice-sheet --key --paper --help --version' -- "$cur"))
    return
  fi
  if [[ " ${words[*]} " == *' --picture '* ]]; then
    _filedir '@(wardchalk|json|png)'
  elif [[ " ${words[*]} " == *sheet\ * ]]; then
    _filedir '@(wardchalk|json|pdf)'
  else
    _filedir '@(wardchalk|json)'
  fi
}
complete -F _wardchalk wardchalk
