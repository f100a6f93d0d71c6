# Clp and CBC of Debian's coinor-libcbc-dev, as one target: linear_solvers (docs/decisions/cbc.md).
include_guard(GLOBAL)
find_path(CBC_HEADERS CbcModel.hpp PATH_SUFFIXES coin REQUIRED)
add_library(linear_solvers INTERFACE)
target_include_directories(linear_solvers SYSTEM INTERFACE ${CBC_HEADERS})
foreach(library Cbc Cgl OsiClp Clp Osi CoinUtils)
  find_library(${library}_LIBRARY ${library} REQUIRED)
  target_link_libraries(linear_solvers INTERFACE ${${library}_LIBRARY})
endforeach()
