// SPDX-License-Identifier: Apache-2.0
// Thirty walks round a rig whose truth is known: defects start, grow, shrink, go, are mended and come back;
// some looks are missed. The simulator keeps the books itself and knows what a comparison has to say.
#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <random>
#include <string>
#include <vector>

#include "../../unit/due/story.hpp"
#include "compare/change.hpp"

namespace snugwalk::test {

class SimulatedRig {
public:
    static constexpr int walkCount = 30;
    static constexpr std::size_t pointCount = 60;

    explicit SimulatedRig(unsigned seed) : m_rng(seed)
    {
        for (std::size_t p = 0; p < pointCount; ++p) {
            m_points.push_back({realCatalogue().points()[p].slug, {}, {}, std::nullopt});
            if (below(20) == 0)
                m_points.back().removedAt = 5 + below(walkCount - 5);
        }
        for (int w = 0; w < walkCount; ++w) {
            walk(w);
            live(w);
        }
    }
    [[nodiscard]] RigHistory history() const { return m_story.history(); }
    [[nodiscard]] const Id &walkId(int w) const { return m_walks[static_cast<std::size_t>(w)]; }
    [[nodiscard]] std::vector<std::string> points() const
    {
        std::vector<std::string> slugs;
        for (const PointTruth &p : m_points)
            slugs.push_back(p.slug);
        return slugs;
    }
    [[nodiscard]] std::vector<Id> findings(std::size_t point) const
    {
        std::vector<Id> ids;
        for (const Defect &d : m_points[point].defects) {
            if (!d.finding.isNull())
                ids.push_back(d.finding);
        }
        return ids;
    }

    /// What the comparison of walks i < j has to say of the point.
    [[nodiscard]] Change pointTruth(std::size_t point, int i, int j) const
    {
        const PointTruth &p = m_points[point];
        if (p.removedAt && *p.removedAt <= j)
            return *p.removedAt <= i ? Change::Same : Change::NotFitted;
        if (!p.looked[at(j)])
            return Change::NotLooked;
        int before = i; // the last look by walk i
        while (before >= 0 && !p.looked[at(before)])
            --before;
        if (before < 0)
            return Change::FirstLook;
        if (presentAt(p, j))
            return worstNow(p, i, j);
        return !presentAt(p, before) ? Change::Same : allMended(p, before, j) ? Change::Mended : Change::Gone;
    }

    /// What it has to say of the finding; nothing when it is not to be told.
    [[nodiscard]] std::optional<Change> findingTruth(std::size_t point, const Id &finding, int i, int j) const
    {
        for (const Defect &d : m_points[point].defects) {
            if (d.finding == finding)
                return truthOf(m_points[point], d, i, j);
        }
        return std::nullopt;
    }

private:
    enum class Book { Unknown, Open, Mended, Confirmed, Gone };
    /// Of one defect as walk w ended.
    struct Page {
        int truth = 0; ///< grade, 0 when it is not there
        Book book = Book::Unknown;
        int bookGrade = 0; ///< last seen
        bool mendedAfter = false;
    };
    struct Defect {
        Id finding;
        int grade = 0;
        Book book = Book::Unknown;
        int bookGrade = 0;
        std::vector<Page> pages;
    };
    struct PointTruth {
        std::string slug;
        std::array<Defect, 2> defects;
        std::array<bool, walkCount> looked{};
        std::optional<int> removedAt;
    };

    static std::size_t at(int w) { return static_cast<std::size_t>(w); }
    int below(int limit) { return std::uniform_int_distribution<int>(0, limit - 1)(m_rng); }
    static LocalTime day(int number)
    {
        LocalTime t = test::at("2020-01-01");
        t.instant += std::chrono::days(number);
        return t;
    }

    void walk(int w)
    {
        std::vector<std::string> tape = points();
        m_walks.push_back(m_story.walk(day(30 * w), "full_round", tape));
        for (PointTruth &p : m_points)
            mark(p, w);
    }

    void mark(PointTruth &p, int w)
    {
        const bool there = !p.removedAt || w < *p.removedAt;
        const int roll = below(100);
        if (!there) {
            m_story.mark(m_walks.back(), p.slug, MarkState::NotFitted, day(30 * w));
        } else if (roll < 85) {
            look(p, w);
        } else if (roll < 93) {
            m_story.mark(m_walks.back(), p.slug, MarkState::CouldNotLook, day(30 * w));
        }
        for (Defect &d : p.defects)
            d.pages.push_back({d.grade, d.book, d.bookGrade, false});
    }

    void look(PointTruth &p, int w)
    {
        p.looked[at(w)] = true;
        bool any = false;
        for (Defect &d : p.defects) {
            any = any || d.grade > 0;
            if (d.grade > 0) {
                if (d.finding.isNull())
                    d.finding = m_story.finding(m_walks.back(), p.slug, "crack", d.grade, day(30 * w));
                else
                    m_story.look(d.finding, m_walks.back(), d.grade, day(30 * w));
                d.book = Book::Open;
                d.bookGrade = d.grade;
            } else if (d.book == Book::Open) {
                m_story.look(d.finding, m_walks.back(), 0, day(30 * w));
                d.book = Book::Gone;
            } else if (d.book == Book::Mended && !anyPresent(p)) {
                d.book = Book::Confirmed; // only a pass of the whole point confirms
            }
        }
        m_story.mark(m_walks.back(), p.slug, any ? MarkState::Attention : MarkState::Pass, day(30 * w));
    }

    static bool anyPresent(const PointTruth &p)
    {
        return std::any_of(p.defects.begin(), p.defects.end(), [](const Defect &d) { return d.grade > 0; });
    }

    // The month after a walk: mends on its tenth day.
    void live(int w)
    {
        for (PointTruth &p : m_points) {
            for (Defect &d : p.defects) {
                const int roll = below(100);
                if (d.grade == 0) {
                    if (roll < (d.finding.isNull() ? 8 : 12))
                        d.grade = 1 + below(3);
                } else if (roll < 20 && d.book == Book::Open) {
                    m_story.mend(day(30 * w + 10), "adjust", {d.finding});
                    d.book = Book::Mended;
                    d.pages.back().mendedAfter = true;
                    d.grade = below(8) == 0 ? 1 + below(3) : 0; // now and then back within the month
                } else if (roll < 50) {
                    d.grade = std::min(5, d.grade + 1);
                } else if (roll < 55) {
                    d.grade = std::max(1, d.grade - 1);
                } else if (roll < 60) {
                    d.grade = 0; // by itself, or nobody wrote it down
                }
            }
        }
    }

    static bool presentAt(const PointTruth &p, int w)
    {
        return std::any_of(p.defects.begin(), p.defects.end(),
                           [&](const Defect &d) { return d.pages[at(w)].truth > 0; });
    }

    // Seen, mended, in the time after walk i up to walk j.
    static bool seenWithin(const PointTruth &p, const Defect &d, int i, int j)
    {
        for (int w = i + 1; w <= j; ++w) {
            if (p.looked[at(w)] && d.pages[at(w)].truth > 0)
                return true;
        }
        return false;
    }

    // A mend after walk i, and it was seen again by walk j.
    static bool cameBack(const PointTruth &p, const Defect &d, int i, int j)
    {
        for (int w = i; w < j; ++w) {
            if (d.pages[at(w)].mendedAfter)
                return seenWithin(p, d, w, j);
        }
        return false;
    }

    static Book bookBefore(const Defect &d, int j)
    {
        // a mend after walk j - 1 is in the book of walk j; one after walk j is not
        return d.pages[at(j)].book;
    }

    static std::optional<Change> truthOf(const PointTruth &p, const Defect &d, int i, int j)
    {
        const bool openThen = d.pages[at(i)].book == Book::Open;
        const Book now = bookBefore(d, j);
        if (now == Book::Open) {
            if (!openThen || cameBack(p, d, i, j))
                return Change::New;
            if (!p.looked[at(j)])
                return Change::NotLooked;
            const int change = d.pages[at(j)].truth - d.pages[at(i)].bookGrade;
            return change > 0 ? Change::Worse : change < 0 ? Change::Better : Change::Same;
        }
        if (now == Book::Unknown || (!openThen && !seenWithin(p, d, i, j)))
            return std::nullopt;
        return now == Book::Gone ? Change::Gone : Change::Mended;
    }

    static Change worstNow(const PointTruth &p, int i, int j)
    {
        for (const Change change : {Change::New, Change::Worse, Change::Same}) {
            for (const Defect &d : p.defects) {
                if (d.pages[at(j)].truth > 0 && truthOf(p, d, i, j) == change)
                    return change;
            }
        }
        return Change::Better;
    }

    // Whatever was open at the look on walk `before`, or was opened since, was closed by a mend.
    static bool allMended(const PointTruth &p, int before, int j)
    {
        return std::none_of(p.defects.begin(), p.defects.end(),
                            [&](const Defect &d) { return truthOf(p, d, before, j) == Change::Gone; });
    }

    Story m_story;
    std::mt19937 m_rng;
    std::vector<PointTruth> m_points;
    std::vector<Id> m_walks;
};

} // namespace snugwalk::test
