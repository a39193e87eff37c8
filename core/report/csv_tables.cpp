// SPDX-License-Identifier: Apache-2.0
// Rows and their quoting.
#include "report/csv_tables.hpp"

#include "base/text.hpp"
#include "report/shortest.hpp"
#include "rig/names.hpp"
#include "walk/mend_part.hpp"
#include "walk/progress.hpp"

namespace snugwalk {
namespace {

std::string cell(const std::string &text)
{
    if (text.find_first_of(",\"\r\n") == std::string::npos)
        return text;
    return "\"" + replaceAll(text, "\"", "\"\"") + "\"";
}

std::string line(const std::vector<std::string> &cells)
{
    std::string out;
    for (std::size_t i = 0; i < cells.size(); ++i)
        out += (i == 0 ? "" : ",") + cell(cells[i]);
    return out + "\r\n";
}

std::string day(const std::optional<CivilDate> &date) { return date ? formatDate(*date) : std::string(); }
std::string yesNo(bool held) { return held ? "yes" : "no"; }

std::vector<std::string> placeCells(const RigPlace &place)
{
    std::vector<std::string> cells = {place.named, place.face ? std::string(slug(*place.face)) : ""};
    for (const auto part : {&RigPosition::aft, &RigPosition::right, &RigPosition::up})
        cells.push_back(place.at ? shortest(((*place.at).*part).si()) : "");
    return cells;
}

std::optional<GeoPoint> firstPlace(const FindingHistory &finding)
{
    for (const Look &look : finding.looks) {
        if (look.where)
            return look.where;
    }
    return std::nullopt;
}

const OpenFinding *openOf(const Standing &standing, const Id &id)
{
    for (const OpenFinding &open : standing.state.open) {
        if (open.id == id)
            return &open;
    }
    return nullptr;
}

std::vector<std::string> findingRow(const Standing &standing, const FindingHistory &history,
                                    const Texts &texts)
{
    const Finding &finding = history.finding;
    const Look *last = lookAt(history, Instant::max());
    const OpenFinding *open = openOf(standing, finding.id);
    const std::optional<Extent> extent = last != nullptr ? last->extent : std::nullopt;
    std::vector<std::string> row = {finding.id.text(),
                                    finding.point,
                                    texts.point(finding.point).title,
                                    finding.defect,
                                    texts.word("defects", finding.defect),
                                    std::string(slug(statusOf(history))),
                                    last != nullptr ? std::to_string(last->grade) : "",
                                    extent ? shortest(extent->si) : "",
                                    extent ? std::string(siSymbol(extent->dimension)) : "",
                                    open != nullptr ? std::string(slug(open->concern.call)) : "",
                                    open != nullptr ? fixed(open->concern.number, 1) : ""};
    for (std::string &part : placeCells(finding.place))
        row.push_back(std::move(part));
    row.insert(row.end(), {formatLocal(finding.opened), last != nullptr ? formatLocal(last->at) : "",
                           last != nullptr ? last->by : "", last != nullptr ? last->note : "",
                           std::to_string(history.photos.size())});
    return row;
}

} // namespace

std::string csvText(const CsvTable &table)
{
    std::string out = line(table.header);
    for (const auto &row : table.rows)
        out += line(row);
    return out;
}

CsvTable findingsTable(const Standing &standing, const Texts &texts, PlaceDetail place)
{
    CsvTable table{{"finding", "point",       "title",  "defect",    "defect_title", "status", "grade",
                    "extent",  "extent_unit", "call",   "concern",   "named_place",  "face",   "aft_m",
                    "right_m", "up_m",        "opened", "last_look", "last_look_by", "note",   "photos"},
                   {}};
    if (place != PlaceDetail::LeftOut)
        table.header.insert(table.header.end(), {"latitude", "longitude", "place_detail"});
    for (const FindingHistory &history : standing.history.findings) {
        std::vector<std::string> row = findingRow(standing, history, texts);
        if (place != PlaceDetail::LeftOut) {
            const auto told = placeToTell(firstPlace(history), place);
            row.push_back(told ? fixed(told->latitude, 7) : "");
            row.push_back(told ? fixed(told->longitude, 7) : "");
            row.emplace_back(told ? slug(place) : "");
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

CsvTable marksTable(const WalkRecord &record, const Texts &texts)
{
    CsvTable table{{"walk", "kind", "point", "title", "mark", "how", "reason", "note", "reading", "place",
                    "value", "unit", "read_in", "tool", "at", "by"},
                   {}};
    const auto add = [&](const std::string &point) {
        const Mark *mark = findMark(record.marks, point);
        const MarkState state = mark != nullptr ? mark->state : MarkState::NotLooked;
        std::vector<std::string> row = {record.walk.id.text(),
                                        record.walk.kind,
                                        point,
                                        texts.point(point).title,
                                        std::string(slug(state)),
                                        state == MarkState::Pass ? std::string(slug(mark->how)) : "",
                                        mark != nullptr ? mark->reason : "",
                                        mark != nullptr ? mark->note : ""};
        const std::vector<std::string> end = {mark != nullptr ? formatLocal(mark->at) : "",
                                              mark != nullptr ? mark->by : ""};
        std::vector<Reading> readings = mark != nullptr ? mark->readings : std::vector<Reading>();
        if (readings.empty()) {
            row.insert(row.end(), 6, "");
            row.insert(row.end(), end.begin(), end.end());
            table.rows.push_back(std::move(row));
            return;
        }
        for (const Reading &reading : readings) {
            std::vector<std::string> whole = row;
            whole.insert(whole.end(), {reading.slug, reading.place, shortest(reading.si),
                                       std::string(siSymbol(reading.dimension)), reading.unit, reading.tool});
            whole.insert(whole.end(), end.begin(), end.end());
            table.rows.push_back(std::move(whole));
        }
    };
    for (const TapeLine &tape : record.walk.tape) {
        for (const std::string &point : tape.points)
            add(point);
    }
    return table;
}

CsvTable mendsTable(const RigHistory &history, const Texts &texts)
{
    CsvTable table{
        {"mend", "at", "by", "action", "what", "parts", "minutes", "cost", "findings", "points", "titles"},
        {}};
    for (const Mend &mend : history.mends) {
        std::vector<std::string> parts;
        for (const MendPart &part : mend.parts)
            parts.push_back(partText(part));
        std::vector<std::string> findings;
        std::vector<std::string> points = mend.points;
        for (const Id &id : mend.findings) {
            findings.push_back(id.text());
            if (const FindingHistory *finding = findHistory(history, id))
                points.push_back(finding->finding.point);
        }
        std::vector<std::string> titles;
        for (const std::string &point : points)
            titles.push_back(texts.point(point).title);
        table.rows.push_back({mend.id.text(), formatLocal(mend.at), mend.by, mend.action, mend.what,
                              join(parts, "; "), mend.minutes ? shortest(*mend.minutes) : "", mend.cost,
                              join(findings, " "), join(points, " "), join(titles, "; ")});
    }
    return table;
}

CsvTable datesTable(const Standing &standing, const Texts &texts)
{
    CsvTable table{{"point", "title", "early", "likely", "late", "rule", "basis", "past_due", "due_now",
                    "each_move", "ever_looked", "last_look"},
                   {}};
    for (const DueBand &band : standing.bands)
        table.rows.push_back({band.point, texts.point(band.point).title, day(band.early), day(band.likely),
                              day(band.late), band.rule, band.basis, yesNo(band.pastDue), yesNo(band.dueNow),
                              yesNo(band.everyMove), yesNo(band.everLooked), day(band.lastLook)});
    return table;
}

} // namespace snugwalk
