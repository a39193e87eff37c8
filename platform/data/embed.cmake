# SPDX-License-Identifier: Apache-2.0
# Writes a C++ file with the bytes of FILES (separated by "|") under DIR, given by the function FUNCTION that
# HEADER declares. As text literals, which compilers read many times faster than lists of numbers.
string(REPLACE "|" ";" FILES "${FILES}")
set(body "// made by platform/data/embed.cmake\n#include \"${HEADER}\"\n\nnamespace snugwalk {\nnamespace {\n")
set(table "")
set(index 0)
foreach(file IN LISTS FILES)
    file(READ ${DIR}/${file} hex HEX)
    string(REGEX REPLACE "([0-9a-f][0-9a-f])" "\\\\x\\1" bytes "${hex}")
    string(APPEND body "constexpr char bytes${index}[] = \"${bytes}\";\n")
    string(APPEND table "    {\"${file}\", {bytes${index}, sizeof bytes${index} - 1}},\n")
    math(EXPR index "${index} + 1")
endforeach()
string(APPEND body "} // namespace\n\nconst std::map<std::string_view, std::string_view> &${FUNCTION}()\n{\n"
    "    static const std::map<std::string_view, std::string_view> files = {\n${table}    };\n    return files;\n}\n\n} // namespace snugwalk\n")
file(WRITE ${OUT} "${body}")
