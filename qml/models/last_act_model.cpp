// SPDX-License-Identifier: Apache-2.0
// The last act in words, and its undoing on the worker.
#include "last_act_model.hpp"

#include "sync/thing_words.hpp"

namespace snugwalk {

QString LastActModel::what() const
{
    if (!m_last)
        return {};
    const Voice &voice = *m_shown.voice;
    return tr("%1, written %2", "thing, date")
        .arg(thingTitle(voice, m_last->act.type, m_last->doc), voice.dateTime(m_last->act.at));
}

void LastActModel::show(const Shown &shown)
{
    const bool isNew = shown.snapshot != m_shown.snapshot;
    m_shown = shown;
    Q_EMIT changed();
    if (isNew && m_asked)
        look();
}

void LastActModel::look()
{
    m_asked = true;
    ++m_waiting;
    Q_EMIT changed();
    const auto ask = [](Logbook &book) -> Result<std::optional<Last>> {
        const Result<LastAct> last = lastAct(book);
        if (!last && last.error().code == Errc::NotFound)
            return std::optional<Last>();
        if (!last)
            return last.error();
        // a rig or a walk that began stays: no word offers to take it back
        const auto mayGo = mayTakeBack(book, last->act);
        if (!mayGo)
            return mayGo.error().code == Errc::Conflict ? Result<std::optional<Last>>(std::optional<Last>())
                                                        : mayGo.error();
        const Result<Thing> now = thing(book.db(), last->type, last->entity);
        return std::optional(Last{*last, now ? now->doc : Value()});
    };
    m_desk->worker->run<std::optional<Last>>(this, ask, [this](Result<std::optional<Last>> last) {
        --m_waiting;
        m_last = last ? std::move(last).value() : std::nullopt;
        Q_EMIT changed();
    });
}

void LastActModel::takeBack()
{
    if (!m_last)
        return;
    ++m_waiting;
    Q_EMIT changed();
    const auto undo = [act = m_last->act.act, by = m_desk->doer().by](Logbook &book) {
        return snugwalk::takeBack(book, act, by);
    };
    m_desk->worker->run<Receipt>(this, undo, [this](Result<Receipt> receipt) {
        --m_waiting;
        if (!receipt)
            m_desk->refuse(receipt.error());
        m_desk->changed(true);
        Q_EMIT changed();
    });
}

} // namespace snugwalk
