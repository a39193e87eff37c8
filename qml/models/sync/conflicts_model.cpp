// SPDX-License-Identifier: Apache-2.0
// Rows from the state, and the two acts that settle them.
#include "conflicts_model.hpp"

#include "sync/share.hpp"
#include "sync_words.hpp"
#include "thing_words.hpp"

namespace snugwalk {
namespace {

QString keyOf(const Conflict &conflict, const FieldConflict &field)
{
    return Voice::text(conflict.entity.text() + "/" + field.field);
}

QString keyOf(const EntryId &id) { return Voice::text(id.stream.text()) + u'/' + QString::number(id.seq); }

QVariantMap versionRow(const Voice &voice, const FieldConflict &field, const Version &version)
{
    return {{QStringLiteral("text"), fieldValue(voice, field.field, version.value)},
            {QStringLiteral("who"), Voice::text(version.by)},
            {QStringLiteral("device"), Voice::text(version.device)},
            {QStringLiteral("when"), voice.dateTime(version.at)},
            {QStringLiteral("shown"), version.value == field.shown}};
}

QVariantList conflictRows(const Voice &voice, const std::vector<ContestedThing> &things)
{
    QVariantList rows;
    for (const ContestedThing &thing : things) {
        for (const FieldConflict &field : thing.conflict.fields) {
            QVariantList versions;
            for (const Version &version : field.versions)
                versions << versionRow(voice, field, version);
            rows << QVariantMap{
                {QStringLiteral("key"), keyOf(thing.conflict, field)},
                {QStringLiteral("title"), thingTitle(voice, thing.conflict.type, thing.doc)},
                {QStringLiteral("field"), fieldTitle(voice, field.field)},
                {QStringLiteral("versions"), versions}};
        }
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
            parts << fieldTitle(voice, field) + QStringLiteral(": ") + fieldValue(voice, field, found->second);
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
        for (const FieldConflict &field : thing.conflict.fields) {
            if (keyOf(thing.conflict, field) != key)
                continue;
            if (index < 0 || index >= static_cast<int>(field.versions.size()))
                return;
            const Value value = field.versions[static_cast<std::size_t>(index)].value;
            const Value::Map chosen{{field.field, value}};
            return run<Receipt>([entity = thing.conflict.entity, chosen, doer = m_desk->doer()](Logbook &book) {
                return resolveConflict(book, entity, chosen, doer);
            });
        }
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
