# A room of core/ or ui/: a library of its own, named after its folder (core/unit is core_unit), which links only the rooms
# that it uses. What two rooms need of each other therefore cannot be built, and a program links no more rooms than it needs.
#
#   wardchalk_room(FILES a.cpp detail/b.cpp USES core_number core_unit WITH Boost::headers)
#
# USES are rooms and are seen by who uses this one; WITH are libraries of others that stay behind its headers.
# A room's detail/ is closed to everyone else: whoever links the room finds, before the source tree, headers of the same
# names that say so. (-iquote is looked through before every -I.)
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
