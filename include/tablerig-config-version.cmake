# The version that the installed header tells. A program works with any later library of the same binary
# interface, so a request is met by any version that is not earlier.
get_filename_component(tablerig_prefix "${CMAKE_CURRENT_LIST_DIR}/../../.." ABSOLUTE)
file(STRINGS "${tablerig_prefix}/include/tablerig.h" tablerig_lines
    REGEX "^#define TABLERIG_VERSION_(MAJOR|MINOR|PATCH) [0-9]+$")
string(REGEX REPLACE "[^0-9]+([0-9]+)" ".\\1" PACKAGE_VERSION "${tablerig_lines}")
string(SUBSTRING "${PACKAGE_VERSION}" 1 -1 PACKAGE_VERSION)
if(PACKAGE_FIND_VERSION VERSION_GREATER PACKAGE_VERSION)
    set(PACKAGE_VERSION_COMPATIBLE FALSE)
else()
    set(PACKAGE_VERSION_COMPATIBLE TRUE)
    if(PACKAGE_FIND_VERSION VERSION_EQUAL PACKAGE_VERSION)
        set(PACKAGE_VERSION_EXACT TRUE)
    endif()
endif()
