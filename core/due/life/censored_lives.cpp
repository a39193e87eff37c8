// SPDX-License-Identifier: Apache-2.0
// Reading and checking; every fault names its line.
#include "due/life/censored_lives.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "base/csv.hpp"
#include "base/text.hpp"

namespace snugwalk {
namespace {

struct Columns {
    std::size_t lower = 0;
    std::size_t upper = 0;
    std::optional<std::size_t> weight;
    std::vector<std::size_t> covariates;
};

bool saysForever(std::string_view cell)
{
    const std::string typed = lowerAscii(cell);
    return typed.empty() || typed == "inf" || typed == "+inf" || typed == "infinity";
}

Error fault(std::string what, std::string where, std::string act)
{
    return {Errc::OutOfRange, std::move(what), std::move(where), std::move(act)};
}

Status checkLife(const CensoredLife &life, const std::string &where, ExactAges exact)
{
    if (!std::isfinite(life.lower) || std::isnan(life.upper) || !std::isfinite(life.weight))
        return Error{Errc::InvalidInput, "not a number", where, "write digits with a decimal point"};
    if (life.lower < 0.0)
        return fault("a negative age in lower", where, "count ages from when it was new");
    if (life.weight < 0.0)
        return fault("a negative weight", where, "write how many alike, or leave the line out");
    if (life.upper < life.lower)
        return fault("upper is below lower", where, "lower is the last pass, upper when it was found");
    if (life.upper > life.lower)
        return done();
    if (exact == ExactAges::Refused)
        return fault("upper equals lower", where, "give the last pass before it was found, or 0");
    if (life.lower <= 0.0)
        return fault("a life of length 0", where, "give the age at which it was found");
    return done();
}

Status takeHeader(std::span<const std::string> header, Columns &columns, CensoredLives &data)
{
    for (std::size_t i = 0; i < header.size(); ++i) {
        if (header[i] == "lower" || header[i] == "upper" || header[i] == "weight")
            continue;
        columns.covariates.push_back(i);
        data.names.push_back(header[i]);
    }
    const auto lower = csvColumn(header, "lower");
    const auto upper = csvColumn(header, "upper");
    if (!lower || !upper)
        return lower ? upper.error() : lower.error();
    columns.lower = *lower;
    columns.upper = *upper;
    columns.weight = findCsvColumn(header, "weight");
    return done();
}

Status takeRow(const CsvRow &row, const Columns &columns, CensoredLives &data, ExactAges exact)
{
    CensoredLife life;
    life.line = row.line;
    const auto read = [&](std::size_t column, double &to) -> Status {
        const Result<double> number = row.number(column);
        if (!number)
            return number.error();
        to = *number;
        return done();
    };
    SNUG_TRY(read(columns.lower, life.lower));
    if (!saysForever(row.cells[columns.upper]))
        SNUG_TRY(read(columns.upper, life.upper));
    if (columns.weight)
        SNUG_TRY(read(*columns.weight, life.weight));
    for (const std::size_t column : columns.covariates)
        SNUG_TRY(read(column, data.covariates.emplace_back()));
    SNUG_TRY(checkLife(life, std::string(row.file) + ", line " + std::to_string(row.line), exact));
    data.lives.push_back(life);
    return done();
}

} // namespace

std::string CensoredLives::where(std::size_t life) const
{
    const std::size_t line = lives[life].line;
    return line > 0 ? "line " + std::to_string(line) : "life " + std::to_string(life + 1);
}

Status checkLives(const CensoredLives &data, ExactAges exact)
{
    if (data.covariates.size() != data.lives.size() * data.names.size())
        return Error{Errc::InvalidInput, "covariates that do not fit the lives", "",
                     "give each life one figure a covariate"};
    for (std::size_t i = 0; i < data.lives.size(); ++i) {
        SNUG_TRY(checkLife(data.lives[i], data.where(i), exact));
        const auto own = std::span(data.covariates).subspan(i * data.names.size(), data.names.size());
        if (!std::all_of(own.begin(), own.end(), [](double x) { return std::isfinite(x); }))
            return Error{Errc::InvalidInput, "a covariate that is not a finite number", data.where(i),
                         "write digits with a decimal point"};
    }
    return done();
}

Result<CensoredLives> censoredLivesFromCsv(std::string_view text, const std::string &file, ExactAges exact)
{
    CensoredLives data;
    Columns columns;
    SNUG_TRY(readCsv(text, file,
                     {[&](std::span<const std::string> header) { return takeHeader(header, columns, data); },
                      [&](const CsvRow &row) { return takeRow(row, columns, data, exact); }}));
    if (data.lives.empty())
        return Error{Errc::InvalidInput, "no lives", file, "write one life a line below the header"};
    return data;
}

} // namespace snugwalk
