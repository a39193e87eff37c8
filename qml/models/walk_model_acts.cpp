// SPDX-License-Identifier: Apache-2.0
// What the person does on the walk.
#include "walk_model.hpp"

#include "attention_form.hpp"
#include "tape_cursor.hpp"
#include "walk_budget.hpp"

namespace snugwalk {

WalkJob WalkModel::job() const
{
    return {m_desk->parts, m_shown.history()->rig,     *m_walk, m_desk->doer(),
            m_taps,        m_shown.snapshot->catalogue};
}

void WalkModel::start(const QString &kindSlug, int minutes)
{
    if (m_shown.history() == nullptr || m_waiting > 0)
        return;
    ++m_waiting;
    Q_EMIT progressChanged();
    const auto act = [snapshot = m_shown.snapshot, kind = kindSlug.toStdString(), minutes,
                      doer = m_desk->doer()](Logbook &book) -> Result<Walk> {
        auto fitted = tapeWithin(*snapshot, kind, minutes, book.now());
        if (!fitted)
            return fitted.error();
        std::optional<WalkBudget> budget;
        if (minutes > 0) {
            budget = WalkBudget{static_cast<double>(minutes), {}};
            for (const LeftOut &left : fitted->leftOut)
                budget->leftOut.push_back(left.point);
        }
        return startWalk(book, snapshot->history->rig, kind, std::move(fitted->tape), budget, doer);
    };
    m_desk->worker->run<Walk>(this, act, [this](Result<Walk> walk) {
        --m_waiting;
        if (!walk) {
            m_desk->refuse(walk.error());
            Q_EMIT progressChanged();
            return;
        }
        const WalkRecord open{std::move(walk).value(), {}};
        adopt(&open);
        showTape();
        Q_EMIT activeChanged();
        Q_EMIT currentChanged();
        Q_EMIT progressChanged();
        Q_EMIT started();
        m_desk->changed(true);
    });
}

void WalkModel::moveTo(int line)
{
    m_current = line;
    m_selected.clear();
    m_typed.clear();
    Q_EMIT currentChanged();
}

void WalkModel::moveOn() { moveTo(nextOpenLine(*m_walk, m_marks, m_pending, m_current).value_or(m_current)); }

void WalkModel::goTo(int line)
{
    if (m_walk && line >= 0 && line < count())
        moveTo(line);
}

void WalkModel::later()
{
    if (m_walk)
        moveOn();
}

void WalkModel::goOn()
{
    if (!m_walk)
        return;
    m_seen.clear(); // cautions come again after a rest
    m_active = true;
    if (line() != nullptr && !isLineOpen(*m_walk, m_marks, m_pending, m_current))
        moveOn();
    Q_EMIT activeChanged();
    Q_EMIT currentChanged();
}

void WalkModel::stop()
{
    m_active = false;
    Q_EMIT activeChanged();
    m_desk->changed(true);
}

void WalkModel::selectPoint(const QString &slug)
{
    const std::string wanted = slug.toStdString();
    const TapeLine *at = line();
    const bool isHere =
        at != nullptr && std::find(at->points.begin(), at->points.end(), wanted) != at->points.end();
    m_selected = isHere ? wanted : std::string();
    Q_EMIT currentChanged();
}

void WalkModel::cautionsRead()
{
    if (line() == nullptr)
        return;
    for (const QVariant &shown : cautionPanel())
        m_seen.insert(seen(shown.toMap().value(QStringLiteral("code")).toString().toStdString()));
    Q_EMIT currentChanged();
}

// Posts an act of the current line; the cursor goes on at once when nothing is left on the line.
template <typename Act>
void WalkModel::write(Act act)
{
    const int at = m_current;
    m_pending.insert(at);
    m_desk->worker->run<WalkNow>(this, std::move(act),
                                 [this, at](Result<WalkNow> now) { settle(at, std::move(now)); });
    showTape();
    Q_EMIT progressChanged();
}

void WalkModel::settle(int line, Result<WalkNow> now)
{
    m_pending.erase(m_pending.find(line));
    if (!now) {
        m_current = line; // back to where something was lost
        m_desk->refuse(now.error());
        showTape();
        Q_EMIT currentChanged();
        Q_EMIT progressChanged();
        Q_EMIT refused(line);
        return;
    }
    m_marks = now->marks;
    for (const Error &mishap : now->mishaps)
        m_desk->refuse(mishap);
    showTape();
    Q_EMIT currentChanged();
    Q_EMIT progressChanged();
    Q_EMIT marked(line, Voice::text(slug(lineState(m_walk->tape[static_cast<std::size_t>(line)], m_marks))));
    // What was found changes the rig; a pass can wait until no tap comes for a moment.
    m_desk->changed(lineState(m_walk->tape[static_cast<std::size_t>(line)], m_marks) == MarkState::Attention);
}

void WalkModel::markChosen(const MarkDraft &how)
{
    if (!m_walk || line() == nullptr)
        return;
    const std::vector<std::string> points = chosenPoints();
    std::vector<std::vector<TypedReading>> readings;
    for (const std::string &point : points)
        readings.push_back(typedFor(m_typed, point));
    const bool lineDone = openPoints(*line(), m_marks).size() <= points.size();
    write([job = job(), tapeLine = *line(), how, points, readings](Logbook &book) {
        return markAlike(book, job, tapeLine, how, points, readings);
    });
    if (lineDone)
        moveOn();
    else
        selectPoint({});
}

void WalkModel::pass(const QString &how)
{
    MarkDraft draft;
    draft.state = MarkState::Pass;
    draft.how = parseLookedHow(how.toStdString()).value_or(LookedHow::Looked);
    markChosen(draft);
}

void WalkModel::notFitted()
{
    MarkDraft draft;
    draft.state = MarkState::NotFitted;
    markChosen(draft);
}

void WalkModel::couldNotLook(const QString &reason, const QString &note)
{
    MarkDraft draft;
    draft.state = MarkState::CouldNotLook;
    draft.reason = reason.toStdString();
    draft.note = note.trimmed().toStdString();
    markChosen(draft);
}

void WalkModel::attention(const QVariantMap &map)
{
    if (!m_walk || line() == nullptr)
        return;
    QVariantMap plain = voice().plainTexts(map, {QStringLiteral("extent")});
    QVariantList findings = map.value(QStringLiteral("findings")).toList();
    for (QVariant &finding : findings)
        finding = voice().plainTexts(finding.toMap(), {QStringLiteral("extent")});
    if (!findings.isEmpty())
        plain[QStringLiteral("findings")] = findings;
    std::vector<AttentionForm> forms = readAttention(plain, singlePoint());
    std::vector<std::string> open = openPoints(*line(), m_marks);
    for (AttentionForm &form : forms) {
        form.draft.readings = typedFor(m_typed, form.draft.point);
        std::erase(open, form.draft.point);
    }
    const bool lineDone = open.empty();
    write([job = job(), forms](Logbook &book) { return markAttention(book, job, forms); });
    if (lineDone)
        moveOn();
    else
        selectPoint({});
}

void WalkModel::setReading(const QString &slug, const QString &place, const QString &text)
{
    const std::string wanted = slug.toStdString();
    for (const std::string &name : chosenPoints()) {
        const Point *point = catalogue().find(name);
        const ReadingSpec *spec = point == nullptr ? nullptr : point->reading(wanted);
        if (spec == nullptr)
            continue;
        const auto key = std::tuple(name, wanted, place.toStdString());
        m_typed.erase(key);
        if (text.trimmed().isEmpty()) {
            Q_EMIT readingChecked(slug, place, true, {});
            return;
        }
        const ReadingCheck check = checkTyped(m_shown, *point, *spec, text);
        if (check.understood)
            m_typed[key] = {text.trimmed(), check.plain};
        Q_EMIT readingChecked(slug, place, check.understood, check.message);
        return;
    }
}

void WalkModel::undo()
{
    if (!m_walk)
        return;
    ++m_waiting;
    Q_EMIT progressChanged();
    m_desk->worker->run<WalkNow>(
        this, [job = job()](Logbook &book) { return takeBack(book, job); },
        [this](Result<WalkNow> now) {
            --m_waiting;
            if (!now) {
                m_desk->refuse(now.error());
                Q_EMIT progressChanged();
                return;
            }
            const bool isChanged = m_marks != now->marks;
            const auto felt = changedLine(*m_walk, m_marks, now->marks);
            m_marks = now->marks;
            showTape();
            moveTo(felt.value_or(m_current));
            Q_EMIT progressChanged();
            if (isChanged)
                Q_EMIT undone();
            m_desk->changed(false);
        });
}

void WalkModel::noteAct()
{
    if (m_walk)
        m_desk->worker->runBeside([taps = m_taps] { taps->push_back(1); });
}

void WalkModel::finish()
{
    if (!m_walk)
        return;
    ++m_waiting;
    Q_EMIT progressChanged();
    m_desk->worker->run<WalkNow>(
        this, [job = job()](Logbook &book) { return finishNow(book, job); },
        [this](Result<WalkNow> now) {
            --m_waiting;
            if (!now) {
                m_desk->refuse(now.error());
                Q_EMIT progressChanged();
                return;
            }
            leave();
        });
}

void WalkModel::leave()
{
    adopt(nullptr);
    showTape();
    Q_EMIT activeChanged();
    Q_EMIT currentChanged();
    Q_EMIT progressChanged();
    Q_EMIT finished();
    m_desk->changed(true);
}

} // namespace snugwalk
