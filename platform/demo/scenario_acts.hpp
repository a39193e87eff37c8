// SPDX-License-Identifier: Apache-2.0
// One act of the scenario after another.
#pragma once

#include <map>
#include <string>

#include "base/value.hpp"
#include "demo/load_demo.hpp"
#include "logbook/acts.hpp"
#include "rig/rig.hpp"

namespace snugwalk {

class ScenarioPlayer {
public:
    ScenarioPlayer(Logbook &book, FixedClock &clock, DemoSource source, const ImageCodec &codec)
        : m_book(book), m_clock(clock), m_source(std::move(source)), m_codec(codec)
    {}

    [[nodiscard]] Status addRig(const Value &rig);
    [[nodiscard]] Status play(const Value &act);
    [[nodiscard]] const DemoReport &report() const { return m_report; }

private:
    [[nodiscard]] Status trip(const Value &act);
    [[nodiscard]] Status stay(const Value &act);
    [[nodiscard]] Status walk(const Value &act);
    [[nodiscard]] Status mend(const Value &act);
    [[nodiscard]] Status happening(const Value &act);
    [[nodiscard]] Status stock(const Value &act);
    [[nodiscard]] Status draw(const Id &photo, const Value &drawing, const Doer &doer);
    [[nodiscard]] Status mark(const Walk &walk, const std::string &point, const Value &mark,
                              const Doer &doer);
    [[nodiscard]] Result<MarkDraft> draft(const std::string &point, const Value &mark) const;
    [[nodiscard]] Status photos(const Value &finding, const MarkReceipt &receipt, const Doer &doer);
    [[nodiscard]] Result<Id> findingNamed(const std::string &name) const;

    Logbook &m_book;
    FixedClock &m_clock;
    DemoSource m_source;
    const ImageCodec &m_codec;
    Rig m_rig;
    std::map<std::string, Id> m_findings; ///< the scenario's names
    DemoReport m_report;
};

} // namespace snugwalk
