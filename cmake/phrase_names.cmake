# Makes the C++ names of the phrases from their ids: title.not-covered is PhraseId::title_notCovered. What is made is
# written only where it changed: another wording of a phrase then rebuilds the table of sentences and nothing else.
#
#   cmake -DFILES=phrases.def;ward_phrases.def -DFOLDER=where/to/write -P phrase_names.cmake
cmake_minimum_required(VERSION 3.25)

set(ids "")
foreach(file IN LISTS FILES)
  file(READ ${file} text)
  string(REGEX MATCHALL "(^|\n)WARDCHALK_PHRASE" phrases "${text}")
  string(REGEX MATCHALL "(^|\n)WARDCHALK_PHRASE\\(\"[^\"\n]*\"" found "${text}")
  list(LENGTH phrases phraseCount)
  list(LENGTH found foundCount)
  if(NOT phraseCount EQUAL foundCount)
    message(FATAL_ERROR "${file}: a phrase does not begin with WARDCHALK_PHRASE(\"its.id\"")
  endif()
  foreach(line IN LISTS found)
    string(REGEX REPLACE "^\n?WARDCHALK_PHRASE\\(\"(.*)\"$" "\\1" id "${line}")
    if(NOT id MATCHES "^[a-z0-9]+(-[a-z0-9]+)*(\\.[A-Za-z0-9]+(-[A-Za-z0-9]+)*)*$")
      message(FATAL_ERROR "${file}: the phrase id \"${id}\" is not like title.not-covered")
    endif()
    if(DEFINED "where_${id}")
      message(FATAL_ERROR "The phrase id \"${id}\" stands twice: in ${where_${id}} and in ${file}")
    endif()
    set("where_${id}" ${file})
    list(APPEND ids ${id})
  endforeach()
endforeach()

set(names "${ids}")
string(REPLACE "." "_" names "${names}")
string(REGEX MATCHALL "." letters "abcdefghijklmnopqrstuvwxyz")
foreach(letter IN LISTS letters)
  string(TOUPPER ${letter} capital)
  string(REPLACE "-${letter}" "${capital}" names "${names}")
endforeach()
string(REPLACE "-" "" names "${names}")  # before a digit or a capital

foreach(name id IN ZIP_LISTS names ids)
  if(DEFINED "id_${name}")
    message(FATAL_ERROR "The phrase ids \"${id_${name}}\" and \"${id}\" would have one name: ${name}")
  endif()
  set("id_${name}" ${id})
endforeach()

function(write_changed file content)
  set(before "")
  if(EXISTS ${file})
    file(READ ${file} before)
  endif()
  if(NOT content STREQUAL before)
    file(WRITE ${file} "${content}")
  endif()
endfunction()

set(head "#pragma once\n\n// Made by cmake/phrase_names.cmake from the phrases in core/words.\n")
list(JOIN names ",\n  " lines)
write_changed(${FOLDER}/phrase_id.h "${head}
#include <cstdint>

namespace wardchalk {

/// Every sentence the program says, named after its id: title.not-covered is title_notCovered.
enum class PhraseId : std::uint16_t {
  ${lines},
};

}  // namespace wardchalk
")

list(TRANSFORM ids REPLACE "(.+)" "\"\\1\"")
list(JOIN ids ",\n    " lines)
write_changed(${FOLDER}/phrase_id_list.h "${head}
#include <array>
#include <string_view>

namespace wardchalk {

/// The id of every phrase, in the order of PhraseId.
inline constexpr auto phraseIds = std::to_array<std::string_view>({
    ${lines},
});

}  // namespace wardchalk
")
