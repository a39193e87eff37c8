// SPDX-License-Identifier: Apache-2.0
// Moving along the tape.
#include "tape_cursor.hpp"

namespace snugwalk {

bool isLineOpen(const Walk &walk, const std::vector<Mark> &marks, const std::multiset<int> &pending, int line)
{
    const TapeLine &tapeLine = walk.tape[static_cast<std::size_t>(line)];
    return pending.count(line) == 0 && lineState(tapeLine, marks) == MarkState::NotLooked;
}

std::optional<int> nextOpenLine(const Walk &walk, const std::vector<Mark> &marks,
                                const std::multiset<int> &pending, int from)
{
    const int count = static_cast<int>(walk.tape.size());
    for (int step = 1; step <= count; ++step) {
        const int line = (from + step) % count;
        if (isLineOpen(walk, marks, pending, line))
            return line;
    }
    return std::nullopt;
}

std::optional<int> changedLine(const Walk &walk, const std::vector<Mark> &before,
                               const std::vector<Mark> &after)
{
    for (std::size_t i = 0; i < walk.tape.size(); ++i) {
        for (const std::string &point : walk.tape[i].points) {
            const Mark *was = findMark(before, point);
            const Mark *is = findMark(after, point);
            if ((was == nullptr) != (is == nullptr) || (was != nullptr && !(*was == *is)))
                return static_cast<int>(i);
        }
    }
    return std::nullopt;
}

std::vector<std::string> openPoints(const TapeLine &line, const std::vector<Mark> &marks)
{
    std::vector<std::string> open;
    for (const std::string &point : line.points) {
        if (findMark(marks, point) == nullptr)
            open.push_back(point);
    }
    return open;
}

} // namespace snugwalk
