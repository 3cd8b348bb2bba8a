# One target carries the warnings; every target of ours links it PRIVATE.
add_library(wardchalk_warnings INTERFACE)
target_compile_options(wardchalk_warnings INTERFACE
  -Wall -Wextra -Wpedantic -Wshadow
  -Wconversion -Wsign-conversion   # a silent narrowing is a lost digit
  -Wold-style-cast
  -Wdouble-promotion               # no floating point comes near a limit; this helps to see it
  # GCC 12 sees overlapping copies in std::string at -O2 where there are none (its bug 105329, mended in 13).
  $<$<AND:$<CXX_COMPILER_ID:GNU>,$<VERSION_LESS:$<CXX_COMPILER_VERSION>,13>>:-Wno-restrict>
  $<$<BOOL:${WARDCHALK_WARNINGS_AS_ERRORS}>:-Werror>)
