# moc reads a class where it stands. It would read every header of Qt that the file includes as well, which takes it 0.6 s a
# file beside 0.01 s and changes nothing that counts: no class of ours is declared by a macro of another file. So it is not
# told where headers are. (What it writes was compared for all 148 files: the same, but that it leaves out an #include of
# qtextcursor.h in six, which ask for it nowhere.)
set(WARDCHALK_MOC "")
if(CMAKE_HOST_UNIX AND TARGET Qt6::moc)
  get_target_property(moc Qt6::moc LOCATION)
  set(WARDCHALK_MOC ${PROJECT_BINARY_DIR}/moc)
  file(CONFIGURE OUTPUT ${WARDCHALK_MOC} @ONLY CONTENT [[#!/bin/sh
for word do
  shift
  case $word in -I*) ;; *) set -- "$@" "$word" ;; esac
done
exec "@moc@" "$@"
]])
  file(CHMOD ${WARDCHALK_MOC} PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE)
endif()

# Lets moc run over the files of a target.
function(wardchalk_automoc target)
  set_target_properties(${target} PROPERTIES AUTOMOC ON)
  if(WARDCHALK_MOC)
    set_target_properties(${target} PROPERTIES AUTOMOC_EXECUTABLE ${WARDCHALK_MOC})
  endif()
endfunction()
