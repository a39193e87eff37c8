// SPDX-License-Identifier: Apache-2.0
// Rows from the state, and the two acts that settle them.
#include "conflicts_model.hpp"

#include <algorithm>

#include "logbook/keep_version.hpp"
#include "sync/share.hpp"
#include "sync_words.hpp"
#include "thing_words.hpp"

namespace snugwalk {
namespace {

QString keyOf(const EntryId &id) { return Voice::text(id.stream.text()) + u'/' + QString::number(id.seq); }

// What one entry wrote into the fields that differ.
struct Side {
    EntryId entry;
    const Version *version = nullptr;
    QStringList lines;
    bool isShown = true;
};

std::vector<Side> sidesOf(const Voice &voice, const Conflict &conflict)
{
    std::vector<Side> sides;
    for (const FieldConflict &field : conflict.fields) {
        for (const Version &version : field.versions) {
            auto side = std::find_if(sides.begin(), sides.end(),
                                     [&](const Side &one) { return one.entry == version.entry; });
            if (side == sides.end())
                side = sides.insert(sides.end(), Side{version.entry, &version, {}, true});
            side->lines << fieldLine(voice, field.field, version.value);
            side->isShown = side->isShown && version.value == field.shown;
        }
    }
    std::stable_sort(sides.begin(), sides.end(), [](const Side &a, const Side &b) {
        return std::pair(a.version->at.instant, a.entry) < std::pair(b.version->at.instant, b.entry);
    });
    return sides;
}

QVariantList conflictRows(const Voice &voice, const std::vector<ContestedThing> &things)
{
    QVariantList rows;
    for (const ContestedThing &thing : things) {
        QVariantList versions;
        for (const Side &side : sidesOf(voice, thing.conflict))
            versions << QVariantMap{{QStringLiteral("text"), side.lines.join(u'\n')},
                                    {QStringLiteral("who"), Voice::text(side.version->by)},
                                    {QStringLiteral("device"), Voice::text(side.version->device)},
                                    {QStringLiteral("when"), voice.dateTime(side.version->at)},
                                    {QStringLiteral("shown"), side.isShown}};
        rows << QVariantMap{{QStringLiteral("key"), Voice::text(thing.conflict.entity.text())},
                            {QStringLiteral("title"), thingTitle(voice, thing.conflict.type, thing.doc)},
                            {QStringLiteral("versions"), versions}};
    }
    return rows;
}

// What a person recognises it by: the first fields that say something of their own.
QString detailOf(const Voice &voice, const Entry &entry)
{
    QStringList parts;
    for (const char *field : {"state", "grade", "action", "what", "note", "reason"}) {
        const auto found = entry.fields.find(field);
        if (found != entry.fields.end() && !found->second.isNull() && found->second != Value(""))
            parts << fieldLine(voice, field, found->second);
    }
    return parts.join(QStringLiteral("; "));
}

QVariantList asideRows(const Voice &voice, const std::vector<WaitingAside> &aside)
{
    QVariantList rows;
    for (const WaitingAside &waiting : aside) {
        const Entry &entry = waiting.item.entry;
        rows << QVariantMap{{QStringLiteral("key"), keyOf(entry.id)},
                            {QStringLiteral("title"), thingTitle(voice, entry.type, waiting.doc)},
                            {QStringLiteral("detail"), detailOf(voice, entry)},
                            {QStringLiteral("who"), Voice::text(entry.by)},
                            {QStringLiteral("when"), voice.dateTime(entry.at)},
                            {QStringLiteral("reason"), asideReason(waiting.item.reason)}};
    }
    return rows;
}

} // namespace

ConflictsModel::ConflictsModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk) {}

void ConflictsModel::show(const Shown &shown, const SyncState &state)
{
    m_shown = shown;
    m_state = state;
    m_conflicts = conflictRows(*shown.voice, state.conflicts);
    m_aside = asideRows(*shown.voice, state.aside);
    Q_EMIT changed();
}

template <typename T, typename Job>
void ConflictsModel::run(Job job)
{
    if (m_busy)
        return;
    m_busy = true;
    m_fault.clear();
    Q_EMIT changed();
    m_desk->worker->run<T>(this, std::move(job), [this](Result<T> answer) {
        m_busy = false;
        if (!answer)
            m_fault = syncFault(answer.error());
        Q_EMIT changed();
        Q_EMIT acted(); // also after a fault: what is shown may be out of date
    });
}

void ConflictsModel::choose(const QString &key, int index)
{
    for (const ContestedThing &thing : m_state.conflicts) {
        if (Voice::text(thing.conflict.entity.text()) != key)
            continue;
        const std::vector<Side> sides = sidesOf(*m_shown.voice, thing.conflict);
        if (index < 0 || index >= static_cast<int>(sides.size()))
            return;
        const std::vector<EntryId> kept{sides[static_cast<std::size_t>(index)].entry};
        return run<KeptVersion>([entity = thing.conflict.entity, kept, doer = m_desk->doer()](Logbook &book) {
            return keepVersion(book, entity, kept, doer);
        });
    }
}

void ConflictsModel::adopt(const QString &key)
{
    std::vector<EntryId> entries;
    for (const WaitingAside &waiting : m_state.aside) {
        if (key.isEmpty() || keyOf(waiting.item.entry.id) == key)
            entries.push_back(waiting.item.entry.id);
    }
    if (entries.empty())
        return;
    run<std::monostate>([entries, rig = m_state.rig](Logbook &book) {
        return adoptEntries(book, Keys(book.device()), rig, entries);
    });
}

void ConflictsModel::clear()
{
    m_fault.clear();
    Q_EMIT changed();
}

} // namespace snugwalk
