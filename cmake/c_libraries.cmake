# Two small C libraries that come without a package file of CMake's: the parser of tables (libcsv-dev) and the one of
# Unicode's letters (libutf8proc-dev).
function(wardchalk_c_library name header library)
  find_path(${name}_INCLUDE_DIR ${header} REQUIRED)
  find_library(${name}_LIBRARY ${library} REQUIRED)
  add_library(wardchalk::${name} UNKNOWN IMPORTED)
  set_target_properties(wardchalk::${name} PROPERTIES IMPORTED_LOCATION ${${name}_LIBRARY}
    INTERFACE_INCLUDE_DIRECTORIES ${${name}_INCLUDE_DIR})
endfunction()

wardchalk_c_library(csv csv.h csv)
wardchalk_c_library(utf8proc utf8proc.h utf8proc)
