# A room of core/ or ui/: a library of its own, named after its folder (core/unit is core_unit), which links only the rooms
# that it uses. What two rooms need of each other therefore cannot be built, and a program links no more rooms than it needs.
#
#   wardchalk_room(FILES a.cpp detail/b.cpp USES core_number core_unit WITH Boost::headers)
#
# USES are rooms and are seen by who uses this one; WITH are libraries of others that stay behind its headers.
# A room's detail/ is closed to everyone else: whoever links the room finds, before the source tree, headers of the same
# names that say so. (-iquote is looked through before every -I.)
#
# The target headers_alone compiles headers by themselves: one that leans on what was read before it breaks the next file
# that reads it first. Of the window it takes those without a source file, since reading Qt 125 times takes minutes: the
# others are read first in their own source file, alone wherever sources are compiled one by one (preset dev).
# all_headers_alone takes all of them.
add_custom_target(headers_alone)
add_custom_target(all_headers_alone)
add_dependencies(all_headers_alone headers_alone)
define_property(GLOBAL PROPERTY WARDCHALK_ROOMS BRIEF_DOCS "every room, each after those that it uses")

function(wardchalk_room)
  cmake_parse_arguments(PARSE_ARGV 0 ROOM "" "" "FILES;USES;WITH")
  cmake_path(RELATIVE_PATH CMAKE_CURRENT_SOURCE_DIR BASE_DIRECTORY ${PROJECT_SOURCE_DIR} OUTPUT_VARIABLE folder)
  string(REPLACE "/" "_" room ${folder})

  add_library(${room} STATIC ${ROOM_FILES})
  add_library(wardchalk::${room} ALIAS ${room})
  set_target_properties(${room} PROPERTIES OUTPUT_NAME wardchalk_${room} POSITION_INDEPENDENT_CODE ON)
  target_include_directories(${room} PUBLIC ${PROJECT_SOURCE_DIR})
  target_link_libraries(${room} PUBLIC ${ROOM_USES} PRIVATE wardchalk_warnings ${ROOM_WITH})
  wardchalk_close_detail(${room} ${folder})
  wardchalk_read_headers_alone(${room} "${ROOM_USES};${ROOM_WITH}")
  set_property(GLOBAL APPEND PROPERTY WARDCHALK_ROOMS ${room})
endfunction()

function(wardchalk_close_detail room folder)
  file(GLOB headers CONFIGURE_DEPENDS RELATIVE ${PROJECT_SOURCE_DIR} ${CMAKE_CURRENT_SOURCE_DIR}/detail/*.h)
  if(NOT headers)
    return()
  endif()
  foreach(header IN LISTS headers)
    file(CONFIGURE OUTPUT ${PROJECT_BINARY_DIR}/closed/${room}/${header}
         CONTENT "#error ${header} is a detail of ${folder}: use what the room shows\n" @ONLY)
  endforeach()
  target_compile_options(${room} INTERFACE -iquote${PROJECT_BINARY_DIR}/closed/${room})
endfunction()

function(wardchalk_read_headers_alone room links)
  file(GLOB_RECURSE headers CONFIGURE_DEPENDS RELATIVE ${CMAKE_CURRENT_SOURCE_DIR} *.h)
  set(few "")
  set(rest "")
  foreach(header IN LISTS headers)
    cmake_path(REPLACE_EXTENSION header LAST_ONLY cpp OUTPUT_VARIABLE source)
    if(room MATCHES "^ui_" AND EXISTS ${CMAKE_CURRENT_SOURCE_DIR}/${source})
      list(APPEND rest ${header})
    else()
      list(APPEND few ${header})
    endif()
  endforeach()
  wardchalk_read_alone(${room}_headers headers_alone "${few}" "${links}")
  wardchalk_read_alone(${room}_other_headers all_headers_alone "${rest}" "${links}")
endfunction()

function(wardchalk_read_alone name target headers links)
  if(NOT headers)
    return()
  endif()
  cmake_path(RELATIVE_PATH CMAKE_CURRENT_SOURCE_DIR BASE_DIRECTORY ${PROJECT_SOURCE_DIR} OUTPUT_VARIABLE folder)
  set(files "")
  foreach(header IN LISTS headers)
    set(file ${PROJECT_BINARY_DIR}/alone/${folder}/${header}.cpp)
    file(CONFIGURE OUTPUT ${file} CONTENT "#include \"${folder}/${header}\"\n" @ONLY)
    list(APPEND files ${file})
  endforeach()
  add_library(${name} OBJECT EXCLUDE_FROM_ALL ${files})
  set_target_properties(${name} PROPERTIES UNITY_BUILD OFF)
  target_include_directories(${name} PRIVATE ${PROJECT_SOURCE_DIR})
  target_compile_options(${name} PRIVATE -O0)
  target_link_libraries(${name} PRIVATE wardchalk_warnings ${links})
  add_dependencies(${target} ${name})
endfunction()
