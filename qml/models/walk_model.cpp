// SPDX-License-Identifier: Apache-2.0
// What the walk shows: adopting the open walk, and the line the cursor stands at.
#include "walk_model.hpp"

#include "catalogue/pick.hpp"
#include "last_time.hpp"
#include "tape_cursor.hpp"
#include "walk_line.hpp"

namespace snugwalk {
namespace {

constexpr int usualReasonCount = 4;

} // namespace

WalkModel::WalkModel(const ActDesk *desk, QObject *parent)
    : QObject(parent), m_desk(desk), m_tape(nullptr), m_taps(std::make_shared<std::vector<int>>())
{}

void WalkModel::show(const Shown &shown)
{
    const WalkRecord *open = shown.snapshot->openWalk();
    const bool isSameWalk = open == nullptr ? !m_walk : m_walk && open->walk.id == m_walk->id;
    const bool isNewSnapshot = shown.snapshot != m_shown.snapshot;
    m_shown = shown;
    // Of the same walk the marks at hand are as new as those read, or newer.
    if (isNewSnapshot && !isSameWalk && !isBusy())
        adopt(open);
    showTape();
    Q_EMIT activeChanged();
    Q_EMIT currentChanged();
    Q_EMIT progressChanged();
}

void WalkModel::adopt(const WalkRecord *open)
{
    m_pending.clear();
    m_taps = std::make_shared<std::vector<int>>();
    m_typed.clear();
    m_selected.clear();
    m_active = open != nullptr;
    m_walk.reset();
    m_marks.clear();
    m_current = -1;
    if (open == nullptr)
        return;
    m_walk = open->walk;
    m_marks = open->marks;
    m_current = static_cast<int>(
        nextLine(*m_walk, m_marks).value_or(m_walk->tape.empty() ? 0 : m_walk->tape.size() - 1));
}

void WalkModel::setNumbered(std::vector<Id> findings)
{
    m_numbered = std::move(findings);
    Q_EMIT currentChanged();
}

void WalkModel::showTape()
{
    const RigHistory *history = m_shown.history();
    if (!m_walk || history == nullptr)
        m_tape.assign({});
    else
        m_tape.assign(tapeRows(catalogue(), m_shown, *m_walk, m_marks, m_pending));
}

const TapeLine *WalkModel::line() const
{
    return m_walk && m_current >= 0 && m_current < count()
               ? &m_walk->tape[static_cast<std::size_t>(m_current)]
               : nullptr;
}

// The points an act is about: the one selected, else those of the line without a mark, else all.
std::vector<std::string> WalkModel::chosenPoints() const
{
    if (!m_selected.empty())
        return {m_selected};
    if (line() == nullptr)
        return {};
    std::vector<std::string> open = openPoints(*line(), m_marks);
    return open.empty() ? line()->points : open;
}

std::string WalkModel::singlePoint() const
{
    const std::vector<std::string> points = chosenPoints();
    return points.empty() ? std::string() : points.front();
}

int WalkModel::linesLeft() const { return m_walk ? snugwalk::linesLeft(*m_walk, m_marks) : 0; }

QString WalkModel::kindName() const
{
    return m_walk ? Voice::text(voice().texts.kindName(m_walk->kind)) : QString();
}

QString WalkModel::progressText() const
{
    if (!m_walk)
        return {};
    return tr("%1 of %2 lines, %3 left").arg(count() - linesLeft()).arg(count()).arg(linesLeft());
}

QString WalkModel::standSlug() const
{
    return line() == nullptr ? QString() : Voice::text(standOf(catalogue(), *line()));
}

QString WalkModel::standName() const
{
    return line() == nullptr ? QString()
                             : Voice::text(voice().texts.standName(standOf(catalogue(), *line())));
}

QString WalkModel::standHelp() const
{
    return line() == nullptr ? QString()
                             : Voice::text(voice().texts.standInstruction(standOf(catalogue(), *line())));
}

bool WalkModel::isGrounded() const
{
    const QString stand = standSlug();
    return stand != QStringLiteral("roof") && stand != QStringLiteral("underneath");
}

int WalkModel::untold() const { return m_walk ? untoldFindings(m_shown, chosenPoints(), m_walk->id) : 0; }

QString WalkModel::title() const
{
    if (line() == nullptr)
        return {};
    return m_selected.empty() ? voice().line(*line()) : voice().point(m_selected);
}

QString WalkModel::look() const
{
    return line() == nullptr ? QString() : Voice::text(voice().texts.point(singlePoint()).look);
}

QString WalkModel::passText() const
{
    return line() == nullptr ? QString() : Voice::text(voice().texts.point(singlePoint()).pass);
}

QVariantList WalkModel::points() const
{
    return line() == nullptr ? QVariantList() : linePoints(voice(), *line(), m_marks);
}

QStringList WalkModel::cautions() const
{
    QStringList list;
    if (line() == nullptr)
        return list;
    for (const std::string &code : lineCautions(catalogue(), *line()))
        list << Voice::text(voice().texts.cautionShort(code));
    return list;
}

WalkModel::Seen WalkModel::seen(const std::string &code) const
{
    return {civilDate(m_desk->parts->clock->now()), m_desk->doer().by, standOf(catalogue(), *line()), code};
}

QVariantList WalkModel::cautionPanel() const
{
    QVariantList list;
    if (line() == nullptr || !m_active)
        return list;
    for (const std::string &code : lineCautions(catalogue(), *line())) {
        if (m_seen.count(seen(code)) == 0)
            list << QVariantMap{{QStringLiteral("code"), Voice::text(code)},
                                {QStringLiteral("full"), Voice::text(voice().texts.cautionFull(code))}};
    }
    return list;
}

QVariantList WalkModel::readings() const
{
    return readingFields(m_shown, catalogue(), chosenPoints(), m_typed);
}

QVariantList WalkModel::openFindings() const
{
    return line() == nullptr ? QVariantList() : openFindingsOf(m_shown, line()->points, m_numbered);
}

QVariantList WalkModel::defects() const { return defectChoices(catalogue(), voice(), singlePoint()); }
QVariantList WalkModel::grades() const { return gradeChoices(voice(), singlePoint()); }
QVariantList WalkModel::reasons() const { return reasonChoices(voice()); }

QVariantList WalkModel::usualReasons() const
{
    return m_walk ? snugwalk::usualReasons(m_shown, chosenPoints(), usualReasonCount) : QVariantList();
}

QVariantMap WalkModel::lastTime() const
{
    return m_walk ? snugwalk::lastTime(m_shown, chosenPoints(), m_walk->id) : QVariantMap();
}

QString WalkModel::decimalMark() const { return QChar::fromLatin1(voice().numberStyle().decimal); }

} // namespace snugwalk
