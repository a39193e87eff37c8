// SPDX-License-Identifier: Apache-2.0
// Invented histories for tests: a few calls make walks, marks, findings, mends and trips.
#pragma once

#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "base/units.hpp"
#include "catalogue/catalogue.hpp"
#include "due/rig_history.hpp"

namespace snugwalk::test {

/// Noon UTC of a day, plus minutes.
inline LocalTime at(std::string_view date, int minutes = 0)
{
    return {startOfDay(parseDate(date).value()) + std::chrono::hours(12) + std::chrono::minutes(minutes), {}};
}

inline std::string fileText(const std::string &name)
{
    std::ifstream in(std::string(SNUGWALK_SOURCE_DIR) + "/" + name, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// The product's own catalogue.
inline const Catalogue &realCatalogue()
{
    static const Catalogue loaded = [] {
        std::vector<std::string> zones;
        for (const char *zone :
             {"alarms-and-exits", "brakes", "fitted-extras", "gas", "hitch", "inside", "latches-and-doors",
              "lights-and-electrics", "lubrication", "motor-base", "roof", "tires-and-wheels", "underbody",
              "walls-and-seals", "water", "weights"})
            zones.push_back(fileText("core/catalogue/data/points/" + std::string(zone) + ".json"));
        return Catalogue::load({zones.begin(), zones.end()}, fileText("core/catalogue/data/sets.json"),
                               fileText("core/catalogue/data/sources.json"),
                               fileText("core/catalogue/data/holds.json"))
            .value();
    }();
    return loaded;
}

/// Hold rules for the points below.
constexpr std::string_view smallHolds =
    R"({"rules":[{"key":"1","forbids":"move","sources":["CP"],"readings":[{"point":"tread",)"
    R"("reading":"tread-depth","below":{"value":1.6,"unit":"mm","quantity":"length"}}]},)"
    R"({"key":"3","forbids":"move","sources":["CP"],"defects":[{"point":"nut","defects":{"missing":1}}]},)"
    R"({"key":"8","forbids":"move","sources":["CP"],"defects":[{"point":"frame","defects":{"crack":3}}]},)"
    R"({"key":"11","forbids":"move","sources":["CP"],"defects":[{"point":"lap","defects":{"loose":4}}]},)"
    R"({"key":"15","forbids":"move","sources":["CP"],"checks":[{"check":"event_not_looked_at",)"
    R"("events":["blow_out","flood"],"consequences":["T"]}]}]})";

/// A catalogue of a dozen points, so that a test can say every number.
inline const Catalogue &smallCatalogue()
{
    static const auto point = [](std::string slug, std::string consequence, std::string rest) {
        return R"({"slug":")" + slug + R"(","stand":"nose","consequence":[")" + consequence +
               R"("],"source":{"tag":"CP","keys":["CP"]},)" + rest + "}";
    };
    static const Catalogue loaded = [] {
        const std::string points =
            R"({"zone":"test","points":[)" +
            point("seam", "W", R"("interval":{"months":3,"uses":["hail"]})") + "," +
            point("grease", "T", R"("interval":{"months":12,"miles":6000})") + "," +
            point("shine", "K", R"("interval":{"months":1})") + "," +
            point("latch", "C", R"("interval":{"months":6})") + "," +
            point("lap", "T", R"("hold":11,"forbids":"move","interval":{"uses":["every_move"]})") + "," +
            point("nut", "T",
                  R"("hold":3,"forbids":"move","interval":{"months":3,"uses":["wheel_fitted"]})") +
            "," +
            point("frame", "T", R"("hold":8,"forbids":"move","interval":{"months":6,"uses":["flood"]})") +
            "," + point("frost", "W", R"("interval":{"uses":["before_frost"]})") + "," +
            point("tread", "T",
                  R"("hold":1,"forbids":"move","interval":{"months":3},"readings":[{"slug":"tread-depth",)"
                  R"("quantity":"length","unit":"mm","low":1.6,"set_by":"published","source":"570.62"}])") +
            "," + point("zero", "W", R"("interval":{"months":0,"miles":0})") + "," +
            point("road", "W", R"("interval":{"miles":1000})") + "]}";
        const std::string sets =
            R"({"kinds":[{"slug":"full_round","all":true},{"slug":"before_road","sets":["every_move"]}],)"
            R"("sets":{"every_move":[{"line":"lap","points":["lap"]}]},"routes":{"lap":["nose"]},)"
            R"("events":{"hail":["seam"],"flood":["frame"],"wheel_fitted":["nut"],"before_frost":["frost"]}})";
        return Catalogue::load({points}, sets, "{}", smallHolds).value();
    }();
    return loaded;
}

/// Grows a history; `history()` gives it with every finding's mends and passes filled in.
class Story {
public:
    Id nextId()
    {
        Id id;
        ++m_count;
        id.bytes[14] = static_cast<std::uint8_t>(m_count / 256);
        id.bytes[15] = static_cast<std::uint8_t>(m_count % 256);
        return id;
    }
    Id walk(LocalTime started, const std::string &kind = "full_round", std::vector<std::string> tape = {})
    {
        WalkRecord record;
        record.walk.id = nextId();
        record.walk.kind = kind;
        record.walk.by = "Ada";
        record.walk.started = started;
        for (std::string &point : tape)
            record.walk.tape.push_back({point, {point}});
        m_history.walks.push_back(record);
        return record.walk.id;
    }
    Mark &mark(Id walk, const std::string &point, MarkState state, LocalTime when)
    {
        for (WalkRecord &record : m_history.walks) {
            if (record.walk.id != walk)
                continue;
            Mark mark;
            mark.id = nextId();
            mark.walk = walk;
            mark.point = point;
            mark.state = state;
            mark.at = when;
            record.marks.push_back(mark);
            return record.marks.back();
        }
        std::abort();
    }
    Id finding(Id walk, const std::string &point, const std::string &defect, int grade, LocalTime when)
    {
        FindingHistory f;
        f.finding.id = nextId();
        f.finding.point = point;
        f.finding.defect = defect;
        f.finding.openedOn = walk;
        f.finding.opened = when;
        m_history.findings.push_back(f);
        look(f.finding.id, walk, grade, when);
        return f.finding.id;
    }
    Look &look(Id finding, Id walk, int grade, LocalTime when)
    {
        Look look;
        look.id = nextId();
        look.finding = finding;
        look.walk = walk;
        look.grade = grade;
        look.at = when;
        FindingHistory &f = *find(finding);
        f.looks.push_back(look);
        return f.looks.back();
    }
    void mend(LocalTime when, const std::string &action, std::vector<Id> findings,
              std::vector<std::string> points = {})
    {
        Mend mend;
        mend.id = nextId();
        mend.at = when;
        mend.action = action;
        mend.findings = std::move(findings);
        mend.points = std::move(points);
        m_history.mends.push_back(mend);
    }
    Trip &trip(LocalTime start, LocalTime end, Distance length)
    {
        Trip trip;
        trip.id = nextId();
        trip.start = start;
        trip.end = end;
        trip.summary.length = length;
        m_history.trips.push_back(trip);
        return m_history.trips.back();
    }
    void happening(LocalTime when, const std::string &kind)
    {
        Happening h;
        h.id = nextId();
        h.kind = kind;
        h.at = when;
        m_history.happenings.push_back(h);
    }
    FindingHistory *find(Id finding)
    {
        for (FindingHistory &f : m_history.findings) {
            if (f.finding.id == finding)
                return &f;
        }
        std::abort();
    }
    Rig &rig() { return m_history.rig; }
    [[nodiscard]] RigHistory history() const
    {
        RigHistory out = m_history;
        for (FindingHistory &f : out.findings) {
            for (const Mend &mend : out.mends) {
                for (const Id &id : mend.findings) {
                    if (id == f.finding.id)
                        f.mends.push_back(mend);
                }
            }
            for (const WalkRecord &record : out.walks) {
                for (const Mark &mark : record.marks) {
                    if (mark.point == f.finding.point && mark.state == MarkState::Pass)
                        f.pointPasses.push_back(mark);
                }
            }
        }
        return out;
    }

private:
    RigHistory m_history;
    int m_count = 0;
};

} // namespace snugwalk::test
