# engine_module(NAME USES other... USES_PRIVATELY other... LINKS library... TEST_LINKS ... PRECOMPILES header...)
#
# Declares one module of the engine, in a way that makes the order of engine/CMakeLists.txt a law:
#   - a used module must already exist, so a backward or circular edge fails while configuring;
#   - each module has its own include root, so an undeclared include is "No such file or directory";
#   - its public headers form a header set, each of which is compiled alone; left out are those that the source of the
#     same name includes first, where it sees nothing that a user of the header would not see.
# What nearly all its files include may be parsed once for all of them (PRECOMPILES). GCC 12 then takes std::string for code
# of ours and warns of its memcpy, so three warnings are off there; ccache needs the preprocessor to name the header.
# Sources are all *.cpp beside the headers; unit tests are all tests/*.cpp (one executable NAME_tests, doctest).
function(engine_module name)
  cmake_parse_arguments(M "" "" "USES;USES_PRIVATELY;LINKS;TEST_LINKS;PRECOMPILES" ${ARGN})
  foreach(used IN LISTS M_USES M_USES_PRIVATELY)
    if(NOT TARGET ${used})
      message(FATAL_ERROR "${name} uses ${used}, which is not an earlier module: the order is engine/CMakeLists.txt")
    endif()
  endforeach()

  file(GLOB sources CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/*.cpp
       ${CMAKE_CURRENT_SOURCE_DIR}/sqlite/*.cpp ${CMAKE_CURRENT_SOURCE_DIR}/inside/*.cpp)   # not public: no header set
  file(GLOB headers CONFIGURE_DEPENDS RELATIVE ${CMAKE_CURRENT_SOURCE_DIR} ${CMAKE_CURRENT_SOURCE_DIR}/*.h)
  set(root ${CMAKE_BINARY_DIR}/include_roots/${name})
  file(MAKE_DIRECTORY ${root})
  file(CREATE_LINK ${CMAKE_CURRENT_SOURCE_DIR} ${root}/${name} SYMBOLIC)
  if(NOT M_PRECOMPILES AND NOT M_USES_PRIVATELY AND NOT M_LINKS)
    foreach(header IN LISTS headers)
      string(REGEX REPLACE "h$" "cpp" source ${CMAKE_CURRENT_SOURCE_DIR}/${header})
      if(EXISTS ${source})
        file(STRINGS ${source} first_line LIMIT_COUNT 1)
        if(first_line STREQUAL "#include \"${name}/${header}\"")
          list(REMOVE_ITEM headers ${header})   # its own source has compiled it alone
        endif()
      endif()
    endforeach()
  endif()
  list(TRANSFORM headers PREPEND ${root}/${name}/)

  add_library(${name} STATIC ${sources})
  set_target_properties(${name} PROPERTIES LINKER_LANGUAGE CXX)
  target_include_directories(${name} PUBLIC ${root})
  target_link_libraries(${name} PUBLIC ${M_USES} PRIVATE ${M_USES_PRIVATELY} ${M_LINKS})
  if(M_PRECOMPILES)
    target_precompile_headers(${name} PRIVATE ${M_PRECOMPILES})
    target_compile_options(${name} PRIVATE -fpch-preprocess -Wno-array-bounds -Wno-stringop-overflow -Wno-stringop-overread)
  endif()
  target_sources(${name} PUBLIC FILE_SET headers TYPE HEADERS BASE_DIRS ${root} FILES ${headers})

  file(GLOB tests CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/tests/*.cpp)
  if(tests)
    engine_tests(${name}_tests SOURCES ${tests} USES ${name} ${M_TEST_LINKS})
  endif()
endfunction()

# engine_tests(NAME SOURCES file... USES module...): one doctest executable, one ctest entry; doctest names the case
# that failed.
function(engine_tests name)
  cmake_parse_arguments(T "" "" "SOURCES;USES" ${ARGN})
  add_executable(${name} ${T_SOURCES} $<TARGET_OBJECTS:doctest_main>)
  target_link_libraries(${name} PRIVATE ${T_USES})
  target_compile_definitions(${name} PRIVATE AMENTUM_SOURCE_DIR="${PROJECT_SOURCE_DIR}")
  target_compile_options(${name} PRIVATE -O1)
  add_test(NAME ${name} COMMAND ${name})
endfunction()
