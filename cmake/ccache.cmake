# A compiler cache makes rebuilding after a branch switch nearly free; it is used where it stands.
find_program(WARDCHALK_CCACHE ccache)
if(WARDCHALK_CCACHE AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
  set(CMAKE_CXX_COMPILER_LAUNCHER ${WARDCHALK_CCACHE})
endif()
