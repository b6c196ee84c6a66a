# find_package(tablerig) gives the target tablerig::tablerig, and tablerig::static where there is the archive.
# Stands in <prefix>/lib/cmake/tablerig or <prefix>/share/cmake/tablerig; moves along with its prefix.
get_filename_component(tablerig_prefix "${CMAKE_CURRENT_LIST_DIR}/../../.." ABSOLUTE)
find_path(tablerig_INCLUDE_DIR tablerig.h PATHS "${tablerig_prefix}/include" NO_DEFAULT_PATH)
find_library(tablerig_SHARED NAMES libtablerig.so libtablerig.dylib tablerig.dll.lib
    PATHS "${tablerig_prefix}/lib" PATH_SUFFIXES "${CMAKE_LIBRARY_ARCHITECTURE}" NO_DEFAULT_PATH)
find_library(tablerig_ARCHIVE NAMES libtablerig.a tablerig.lib
    PATHS "${tablerig_prefix}/lib" PATH_SUFFIXES "${CMAKE_LIBRARY_ARCHITECTURE}" NO_DEFAULT_PATH)
mark_as_advanced(tablerig_INCLUDE_DIR tablerig_SHARED tablerig_ARCHIVE)

if(tablerig_ARCHIVE AND tablerig_INCLUDE_DIR AND NOT TARGET tablerig::static)
    add_library(tablerig::static UNKNOWN IMPORTED)
    set_target_properties(tablerig::static PROPERTIES
        IMPORTED_LOCATION "${tablerig_ARCHIVE}"
        INTERFACE_INCLUDE_DIRECTORIES "${tablerig_INCLUDE_DIR}")
endif()
if(tablerig_SHARED AND tablerig_INCLUDE_DIR AND NOT TARGET tablerig::tablerig)
    add_library(tablerig::tablerig UNKNOWN IMPORTED)
    set_target_properties(tablerig::tablerig PROPERTIES
        IMPORTED_LOCATION "${tablerig_SHARED}"
        INTERFACE_INCLUDE_DIRECTORIES "${tablerig_INCLUDE_DIR}")
elseif(TARGET tablerig::static AND NOT TARGET tablerig::tablerig)
    add_library(tablerig::tablerig ALIAS tablerig::static)
endif()
if(NOT TARGET tablerig::tablerig)
    set(tablerig_FOUND FALSE)
    set(tablerig_NOT_FOUND_MESSAGE "neither library nor archive under ${tablerig_prefix}")
endif()
