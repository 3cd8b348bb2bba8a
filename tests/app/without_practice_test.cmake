# A console built without practice beside the whole one.
function(answer variable)
  execute_process(COMMAND ${ARGN} OUTPUT_VARIABLE said ERROR_VARIABLE told RESULT_VARIABLE status)
  set(${variable} "${said}" PARENT_SCOPE)
  set(${variable}_status ${status} PARENT_SCOPE)
endfunction()

answer(own ${PROGRAM} check ${CASE} --json)
answer(whole ${WHOLE} check ${CASE} --json)
if(NOT own_status EQUAL 0 OR own STREQUAL "" OR NOT own STREQUAL whole)
  message(FATAL_ERROR "another worksheet without practice: ${own}")
endif()

answer(help ${PROGRAM} --help)
answer(whole_help ${WHOLE} --help)
if(NOT whole_help MATCHES "practice" OR NOT whole_help MATCHES "references" OR help MATCHES "practice|mark "
   OR NOT help MATCHES "references")
  message(FATAL_ERROR "offers what it does not have, or less than it has: ${help}")
endif()

foreach(command practice mark)
  answer(refused ${PROGRAM} ${command} --help)
  if(NOT refused_status EQUAL 2)
    message(FATAL_ERROR "${command}: ended with ${refused_status}")
  endif()
endforeach()
