// SPDX-License-Identifier: Apache-2.0
// Rows by most pairs not seen yet.
#include "combinations.hpp"

#include <set>
#include <tuple>

namespace snugwalk::screens {
namespace {

// factor, choice, later factor, its choice
using Pair = std::tuple<std::size_t, std::size_t, std::size_t, std::size_t>;
using Pairs = std::set<Pair>;

Pairs everyPair(const std::vector<std::size_t> &counts)
{
    Pairs pairs;
    for (std::size_t a = 0; a < counts.size(); ++a)
        for (std::size_t b = a + 1; b < counts.size(); ++b)
            for (std::size_t i = 0; i < counts[a]; ++i)
                for (std::size_t j = 0; j < counts[b]; ++j)
                    pairs.emplace(a, i, b, j);
    return pairs;
}

Pair pairOf(std::size_t a, std::size_t i, std::size_t b, std::size_t j)
{
    return a < b ? Pair{a, i, b, j} : Pair{b, j, a, i};
}

// The row that begins with one pair and takes factor after factor what shows most new pairs.
Row rowFrom(const Pair &first, const Pairs &left, const std::vector<std::size_t> &counts)
{
    const auto [a, i, b, j] = first;
    Row row(counts.size(), 0);
    row[a] = i;
    row[b] = j;
    std::vector<std::size_t> chosen{a, b};
    for (std::size_t factor = 0; factor < counts.size(); ++factor) {
        if (factor == a || factor == b)
            continue;
        std::size_t most = 0;
        for (std::size_t choice = 0; choice < counts[factor]; ++choice) {
            std::size_t fresh = 0;
            for (const std::size_t other : chosen)
                fresh += left.count(pairOf(factor, choice, other, row[other]));
            if (choice == 0 || fresh > most) {
                most = fresh;
                row[factor] = choice;
            }
        }
        chosen.push_back(factor);
    }
    return row;
}

void strike(Pairs &left, const Row &row)
{
    for (std::size_t a = 0; a < row.size(); ++a)
        for (std::size_t b = a + 1; b < row.size(); ++b)
            left.erase({a, row[a], b, row[b]});
}

} // namespace

std::vector<Row> pairwise(const std::vector<std::size_t> &counts)
{
    std::vector<Row> rows;
    for (Pairs left = everyPair(counts); !left.empty();) {
        rows.push_back(rowFrom(*left.begin(), left, counts));
        strike(left, rows.back());
    }
    return rows;
}

std::vector<Row> everyRow(const std::vector<std::size_t> &counts)
{
    std::vector<Row> rows{{}};
    for (const std::size_t count : counts) {
        std::vector<Row> longer;
        for (const Row &row : rows) {
            for (std::size_t choice = 0; choice < count; ++choice) {
                longer.push_back(row);
                longer.back().push_back(choice);
            }
        }
        rows = std::move(longer);
    }
    return rows;
}

std::size_t pairsMissing(const std::vector<Row> &rows, const std::vector<std::size_t> &counts)
{
    Pairs left = everyPair(counts);
    for (const Row &row : rows)
        strike(left, row);
    return left.size();
}

} // namespace snugwalk::screens
