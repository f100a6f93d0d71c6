# KDL and Simbody, for tests and benches alone: rigid_body_kdl and rigid_body_simbody exist when the library is installed
# (scripts/install_tools.sh test does that).
include_guard(GLOBAL)
find_package(Eigen3 QUIET)

function(rigid_body_library name header suffix)
  find_path(${name}_headers ${header} PATH_SUFFIXES ${suffix})
  set(found)
  foreach(library IN LISTS ARGN)
    find_library(${name}_${library} ${library})
    list(APPEND found ${${name}_${library}})   # NOTFOUND keeps the list false
  endforeach()
  if(NOT ${name}_headers OR found MATCHES NOTFOUND)
    return()
  endif()
  add_library(${name} INTERFACE)
  target_include_directories(${name} SYSTEM INTERFACE ${${name}_headers})
  target_link_libraries(${name} INTERFACE ${found})
endfunction()

rigid_body_library(rigid_body_kdl kdl/chain.hpp "" orocos-kdl)
if(TARGET rigid_body_kdl)
  target_link_libraries(rigid_body_kdl INTERFACE Eigen3::Eigen)
endif()
rigid_body_library(rigid_body_simbody Simbody.h simbody SimTKsimbody SimTKmath SimTKcommon)
