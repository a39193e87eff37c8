// SPDX-License-Identifier: Apache-2.0
// Reports of several kinds, saved in every form.
#include "app_steps.hpp"
#include "stories.hpp"

namespace snugwalk::journey {
namespace {

void hand(Life &life)
{
    saveReport(life, QStringLiteral("Walk report"), QStringLiteral("PDF"), QStringLiteral("papers-1-walk"));
    saveMore(life, QStringLiteral("web page"));
    saveMore(life, QStringLiteral("table, CSV"));
    saveMore(life, QStringLiteral("calendar"));
    saveMore(life, QStringLiteral("map data, GeoJSON"));
    life.finger().tap(QStringLiteral("Sheets of paper: Letter"));
    life.settle();
    life.shot(QStringLiteral("papers-2-letter"));
    life.finger().tap(QStringLiteral("another report"));
    life.shot(QStringLiteral("papers-3-kinds"));
    life.finger().tap(QStringLiteral("Work order"));
    life.settle();
    life.shot(QStringLiteral("papers-4-work-order"));
    saveMore(life, QStringLiteral("PDF"), QStringLiteral("order"));
}

} // namespace

Stories papersStories() { return {{QStringLiteral("hand"), hand}}; }

} // namespace snugwalk::journey
