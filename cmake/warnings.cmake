# One target carries the warnings; every target of ours links it PRIVATE.
add_library(wardchalk_warnings INTERFACE)
target_compile_options(wardchalk_warnings INTERFACE
  -Wall -Wextra -Wpedantic -Wshadow
  -Wconversion -Wsign-conversion   # a silent narrowing is a lost digit
  -Wold-style-cast
  -Wdouble-promotion               # no floating point comes near a limit; this helps to see it
  $<$<BOOL:${WARDCHALK_WARNINGS_AS_ERRORS}>:-Werror>)
