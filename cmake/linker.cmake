# The gold linker links a program in a quarter of the time, and there are 60 of tests. It is used where it stands, but never
# for what is shipped: there the compiler's own choice holds.
include(CheckLinkerFlag)
check_linker_flag(CXX -fuse-ld=gold WARDCHALK_HAS_GOLD)
if(WARDCHALK_HAS_GOLD AND NOT CMAKE_BUILD_TYPE STREQUAL "Release")
  add_link_options(-fuse-ld=gold)
endif()
