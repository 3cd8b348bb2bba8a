# The practice call of the console program: the same seed gives the same, one problem a line with --json, keys after all
# problems in the text, and wrong usage is refused.
function(run out)
  execute_process(COMMAND ${PROGRAM} practice ${ARGN} OUTPUT_VARIABLE text COMMAND_ERROR_IS_FATAL ANY)
  set(${out} "${text}" PARENT_SCOPE)
endfunction()

run(first --topic mixed --level 3 --count 12 --seed 7)
run(again --topic mixed --level 3 --count 12 --seed 7)
if(NOT first STREQUAL again)
  message(FATAL_ERROR "the same seed gave two sets")
endif()
run(other --topic mixed --level 3 --count 12 --seed 8)
if(first STREQUAL other)
  message(FATAL_ERROR "two seeds gave one set")
endif()
string(FIND "${first}" "Problem 12" last)
string(FIND "${first}" "Key to problem 1" key)
if(last LESS 0 OR key LESS last)
  message(FATAL_ERROR "the keys do not come after all problems:\n${first}")
endif()
if(NOT first MATCHES "^PRACTICE: invented medicines")
  message(FATAL_ERROR "the page does not say that it is practice:\n${first}")
endif()

run(lines --topic dose-by-bsa --count 5 --seed 1 --json --rules classroom)
string(REGEX MATCHALL "{\"format\":\"wardchalk.problem\",\"version\":1,\"seed\":[0-9]+,\"topic\":\"dose-by-bsa\",\"level\":1,"
       problems "${lines}")
string(REGEX MATCHALL "\n" ends "${lines}")
list(LENGTH problems count)
list(LENGTH ends lineCount)
if(NOT count EQUAL 5 OR NOT lineCount EQUAL 5)
  message(FATAL_ERROR "${count} problems on ${lineCount} lines for 5")
endif()

foreach(wrong "--topic;dose;--count;1;--seed;1" "--topic;bsa;--count;0;--seed;1" "--topic;bsa;--count;1001;--seed;1"
              "--topic;bsa;--count;1" "--count;1;--seed;1" "--topic;bsa;--count;1;--seed;-1"
              "--topic;bsa;--level;4;--count;1;--seed;1" "--topic;bsa;--count;1;--seed;9007199254740992"
              "--topic;bsa;--count;1;--seed;1;--rules;none.json")
  execute_process(COMMAND ${PROGRAM} practice ${wrong} RESULT_VARIABLE status OUTPUT_QUIET ERROR_QUIET)
  if(NOT status EQUAL 2)
    message(FATAL_ERROR "${wrong} gave status ${status}")
  endif()
endforeach()
