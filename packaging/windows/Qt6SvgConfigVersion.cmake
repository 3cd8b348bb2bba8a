# It goes with any Qt 6: it is one class with its drawing, and hangs on no version of the rest.
set(PACKAGE_VERSION ${PACKAGE_FIND_VERSION})
if(PACKAGE_FIND_VERSION_MAJOR EQUAL 6)
  set(PACKAGE_VERSION_COMPATIBLE TRUE)
endif()
