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

foreach(console PROGRAM WHOLE)
  answer(made_by_${console} ${${console}} practice --topic bsa --count 1 --seed 1)
endforeach()
if(NOT made_by_PROGRAM_status EQUAL 2 OR NOT made_by_PROGRAM STREQUAL "" OR NOT made_by_WHOLE_status EQUAL 0)
  message(FATAL_ERROR "practice: ended with ${made_by_PROGRAM_status}, the whole one with ${made_by_WHOLE_status}")
endif()
