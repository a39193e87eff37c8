// SPDX-License-Identifier: Apache-2.0
// Counting marks.
#include "walk/progress.hpp"

#include <algorithm>

namespace snugwalk {
namespace {

MarkState stateOf(const std::vector<Mark> &marks, std::string_view point)
{
    const Mark *mark = findMark(marks, point);
    return mark == nullptr ? MarkState::NotLooked : mark->state;
}

// Attention outranks a missing look, which outranks pass: the order in which marks need a person.
int rank(MarkState state)
{
    switch (state) {
    case MarkState::Attention:
        return 3;
    case MarkState::CouldNotLook:
        return 2;
    case MarkState::Pass:
        return 1;
    default:
        return 0;
    }
}

} // namespace

const Mark *findMark(const std::vector<Mark> &marks, std::string_view point)
{
    const auto found =
        std::find_if(marks.begin(), marks.end(), [&](const Mark &m) { return m.point == point; });
    return found == marks.end() ? nullptr : &*found;
}

MarkState lineState(const TapeLine &line, const std::vector<Mark> &marks)
{
    MarkState worst = MarkState::NotFitted;
    for (const std::string &point : line.points) {
        const MarkState state = stateOf(marks, point);
        if (state == MarkState::NotLooked)
            return MarkState::NotLooked;
        if (rank(state) > rank(worst))
            worst = state;
    }
    return worst;
}

Counts countMarks(const Walk &walk, const std::vector<Mark> &marks)
{
    Counts counts;
    for (const TapeLine &line : walk.tape) {
        for (const std::string &point : line.points) {
            ++counts.points;
            switch (stateOf(marks, point)) {
            case MarkState::Pass:
                ++counts.pass;
                break;
            case MarkState::Attention:
                ++counts.attention;
                break;
            case MarkState::NotFitted:
                ++counts.notFitted;
                break;
            case MarkState::CouldNotLook:
                ++counts.couldNotLook;
                break;
            case MarkState::NotLooked:
                ++counts.notLooked;
                break;
            }
        }
    }
    return counts;
}

std::optional<std::size_t> nextLine(const Walk &walk, const std::vector<Mark> &marks)
{
    for (std::size_t i = 0; i < walk.tape.size(); ++i) {
        if (lineState(walk.tape[i], marks) == MarkState::NotLooked)
            return i;
    }
    return std::nullopt;
}

int linesLeft(const Walk &walk, const std::vector<Mark> &marks)
{
    return static_cast<int>(std::count_if(walk.tape.begin(), walk.tape.end(), [&](const TapeLine &line) {
        return lineState(line, marks) == MarkState::NotLooked;
    }));
}

} // namespace snugwalk
