# SPDX-License-Identifier: Apache-2.0
# Writes a C++ file with the bytes of FILES (separated by "|") under DIR.
string(REPLACE "|" ";" FILES "${FILES}")
set(body "// made by platform/data/embed.cmake\n#include \"data/embedded_files.hpp\"\n\nnamespace snugwalk {\nnamespace {\n")
set(table "")
set(index 0)
foreach(file IN LISTS FILES)
    file(READ ${DIR}/${file} hex HEX)
    string(REGEX REPLACE "([0-9a-f][0-9a-f])" "0x\\1," bytes "${hex}")
    string(APPEND body "constexpr unsigned char bytes${index}[] = {${bytes}};\n")
    string(APPEND table "    {\"${file}\", {reinterpret_cast<const char *>(bytes${index}), sizeof bytes${index}}},\n")
    math(EXPR index "${index} + 1")
endforeach()
string(APPEND body "} // namespace\n\nconst std::map<std::string_view, std::string_view> &embeddedFiles()\n{\n"
    "    static const std::map<std::string_view, std::string_view> files = {\n${table}    };\n    return files;\n}\n\n} // namespace snugwalk\n")
file(WRITE ${OUT} "${body}")
