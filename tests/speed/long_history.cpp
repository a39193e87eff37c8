// SPDX-License-Identifier: Apache-2.0
// Each walk is one act, or twenty years would take an hour to write.
#include "long_history.hpp"

#include <algorithm>
#include <chrono>
#include <map>

#include "data/embedded.hpp"
#include "logbook/acts.hpp"
#include "rig/rig_value.hpp"
#include "trip/trip_value.hpp"
#include "walk/walk_value.hpp"

namespace snugwalk {
namespace {

constexpr int months = 240;
constexpr int newFindingsARound = 8;

Rig wholeRig()
{
    Rig rig;
    rig.name = "Whole";
    rig.measures = {metres(6.4), metres(2.44), metres(2.2),
                    metres(0.6), metres(1.3),  {metres(3.3), metres(4.15)}};
    rig.tires.placard = kilopascals(345);
    rig.wheels = {5, Torque::fromSi(135.6)};
    for (const std::string &fitting : knownFittings())
        rig.fittings.insert(fitting);
    return rig;
}

class Writer {
public:
    Writer(Logbook &book, const LocalTime &first) : m_book(book), m_now(first)
    {
        Rig rig = wholeRig();
        rig.id = book.newId();
        m_out.rig = rig.id;
        put(rig.id, "rig", toValue(rig));
        commit(Id{});
    }

    LongHistory write()
    {
        for (int month = 1; month <= months; ++month) {
            m_now.instant += std::chrono::days(20);
            trips();
            m_now.instant += std::chrono::days(5);
            walk("before_road", month);
            m_now.instant += std::chrono::days(5);
            if (month % 12 == 0) {
                mends();
                walk("full_round", month);
            }
        }
        return m_out;
    }

private:
    void put(const Id &id, const char *type, const Value &value)
    {
        m_changes.push_back({id, type, value.map()});
    }

    void commit(const Id &scope)
    {
        SNUG_ASSERT(m_book.record(Act{"Ada", m_now, {}, scope, Id{}, std::move(m_changes)}).has_value());
        m_changes.clear();
    }

    void trips()
    {
        for (int i = 0; i < 2; ++i) {
            Trip trip;
            trip.rig = m_out.rig;
            trip.start = m_now;
            trip.end = {m_now.instant + std::chrono::hours(6), m_now.offset};
            trip.summary.length = kilometres(150);
            put(m_book.newId(), "trip", toValue(trip));
            m_now.instant += std::chrono::hours(12);
            ++m_out.trips;
        }
        commit(Id{});
    }

    void walk(const std::string &kind, int month)
    {
        Walk walk;
        walk.id = m_book.newId();
        walk.rig = m_out.rig;
        walk.kind = kind;
        walk.by = "Ada";
        walk.started = m_now;
        for (const Point &point : productCatalogue().points()) {
            if (kind == "full_round" || isEachMove(point))
                walk.tape.push_back({point.slug, {point.slug}});
        }
        for (std::size_t i = 0; i < walk.tape.size(); ++i) {
            m_now.instant += std::chrono::seconds(30);
            mark(walk, walk.tape[i].slug, static_cast<int>(i), month);
        }
        walk.finished = m_now;
        put(walk.id, "walk", toValue(walk));
        commit(walk.id);
        ++m_out.walks;
    }

    static bool isEachMove(const Point &point)
    {
        const auto &uses = point.interval.uses;
        return std::find(uses.begin(), uses.end(), "every_move") != uses.end();
    }

    void mark(const Walk &walk, const std::string &slug, int index, int month)
    {
        const Point &point = *productCatalogue().find(slug);
        Mark mark;
        mark.walk = walk.id;
        mark.point = slug;
        mark.state = MarkState::Pass;
        mark.by = walk.by;
        mark.at = m_now;
        for (const ReadingSpec &spec : point.readings)
            addReadings(point, spec, month, mark);
        if (walk.kind == "full_round")
            findings(walk, slug, index, month, mark);
        put(markId(walk.id, slug), "mark", toValue(mark));
        ++m_out.marks;
    }

    static void addReadings(const Point &point, const ReadingSpec &spec, int month, Mark &mark)
    {
        const double from = spec.lowSi ? *spec.lowSi * 4.0 : spec.highSi ? *spec.highSi * 0.2 : 100.0;
        const double drift = (spec.lowSi ? -0.002 : 0.002) * month * from;
        if (point.repeat != "wheel") {
            mark.readings.push_back({spec.slug, "", spec.dimension, from + drift, spec.unit});
            return;
        }
        for (const char *place : {"wheel 1L", "wheel 1R", "wheel 2L", "wheel 2R"})
            mark.readings.push_back({spec.slug, place, spec.dimension, from + drift, spec.unit});
    }

    void findings(const Walk &walk, const std::string &slug, int index, int month, Mark &mark)
    {
        for (const auto &[id, point] : m_open) {
            if (point == slug)
                look(walk, id, 2 + month % 2, mark);
        }
        if (index % 27 != month / 12 % 27 || m_new[month] >= newFindingsARound)
            return;
        ++m_new[month];
        Finding finding;
        finding.rig = m_out.rig;
        finding.point = slug;
        finding.defect = "other";
        finding.openedOn = walk.id;
        finding.opened = m_now;
        const Id id = m_book.newId();
        put(id, "finding", toValue(finding));
        look(walk, id, 2, mark);
        m_open.emplace_back(id, slug);
        ++m_out.findings;
    }

    void look(const Walk &walk, const Id &finding, int grade, Mark &mark)
    {
        Look look;
        look.finding = finding;
        look.walk = walk.id;
        look.at = m_now;
        look.by = walk.by;
        look.grade = grade;
        look.extent = Extent{Dimension::Length, 0.02, "mm"};
        put(m_book.newId(), "look", toValue(look));
        mark.state = MarkState::Attention;
    }

    // The older half of what is open.
    void mends()
    {
        const std::size_t half = m_open.size() / 2;
        for (std::size_t i = 0; i < half; ++i) {
            Mend mend;
            mend.rig = m_out.rig;
            mend.at = m_now;
            mend.by = "Ada";
            mend.action = "reseal";
            mend.findings = {m_open[i].first};
            put(m_book.newId(), "mend", toValue(mend));
        }
        m_open.erase(m_open.begin(), m_open.begin() + static_cast<std::ptrdiff_t>(half));
        if (half > 0)
            commit(Id{});
    }

    Logbook &m_book;
    LocalTime m_now;
    LongHistory m_out;
    std::vector<EntityChange> m_changes;
    std::vector<std::pair<Id, std::string>> m_open;
    std::map<int, int> m_new;
};

} // namespace

LongHistory writeTwentyYears(Logbook &book, const LocalTime &first) { return Writer(book, first).write(); }

} // namespace snugwalk
