# The one class of QtSvg that the program uses (make-libraries says where it comes from), under the name by which
# find_package(Qt6 COMPONENTS Svg) asks for it.
get_filename_component(prefix ${CMAKE_CURRENT_LIST_DIR}/../../.. ABSOLUTE)
add_library(Qt6::Svg STATIC IMPORTED)
set_target_properties(Qt6::Svg PROPERTIES IMPORTED_LOCATION ${prefix}/lib/libQt6Svg.a
  INTERFACE_INCLUDE_DIRECTORIES "${prefix}/include/QtSvg;${prefix}/include" INTERFACE_COMPILE_DEFINITIONS "Q_SVG_EXPORT="
  INTERFACE_LINK_LIBRARIES Qt6::Gui)
unset(prefix)
