# The package for Debian (and what is built on it), made by CPack: packaging/package deb.
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME wardchalk)
set(CPACK_PACKAGE_VENDOR "The Wardchalk authors")
set(CPACK_PACKAGE_CONTACT "${WARDCHALK_MAINTAINER}")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "check a child's dose against a reference and show the working")
set(CPACK_PACKAGE_DESCRIPTION
"Wardchalk takes the facts of an order for a child from a form, works the
whole problem by dimensional analysis with every unit struck out against
its partner, and says whether the order is safe by the reference that was
entered. Only then it gives the amount to measure.

It is for nurses, nursing students and their teachers. It ships no dosing
data, checks only what was typed in, and takes the place of neither the
pharmacist, local policy, nor an independent second check.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_INSTALL_CMAKE_PROJECTS "${PROJECT_BINARY_DIR};Wardchalk;Unspecified;/")  # not the licence that Debian has
set(CPACK_STRIP_FILES ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_DEPENDS fonts-dejavu-core)  # without any font every letter is a box, and nothing fails
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
    OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
include(CPack)
