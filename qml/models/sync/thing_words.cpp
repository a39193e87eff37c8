// SPDX-License-Identifier: Apache-2.0
// Names for what the entries hold.
#include "thing_words.hpp"

#include <array>
#include <utility>

#include <QStringList>

namespace snugwalk {
namespace {

using Pair = std::pair<const char *, const char *>;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Thing)
public:
    static QString type(const std::string &type);
    static QString quantity(const Voice &voice, const Value &value);
    static QString slugged(const Voice &voice, const std::string &field, const std::string &slug);
    static QString parts(const Voice &voice, const Value &value);
};

constexpr std::array types = {
    Pair{"rig", QT_TRANSLATE_NOOP("Thing", "The rig")},
    Pair{"walk", QT_TRANSLATE_NOOP("Thing", "Walk")},
    Pair{"mark", QT_TRANSLATE_NOOP("Thing", "Mark")},
    Pair{"finding", QT_TRANSLATE_NOOP("Thing", "Finding")},
    Pair{"look", QT_TRANSLATE_NOOP("Thing", "Look at a finding")},
    Pair{"mend", QT_TRANSLATE_NOOP("Thing", "Mend")},
    Pair{"photo", QT_TRANSLATE_NOOP("Thing", "Photo")},
    Pair{"trip", QT_TRANSLATE_NOOP("Thing", "Trip")},
    Pair{"stay", QT_TRANSLATE_NOOP("Thing", "Stay")},
    Pair{"weather", QT_TRANSLATE_NOOP("Thing", "Weather record")},
    Pair{"happening", QT_TRANSLATE_NOOP("Thing", "Event")},
    Pair{"own_point", QT_TRANSLATE_NOOP("Thing", "Own point")},
    Pair{"hidden_point", QT_TRANSLATE_NOOP("Thing", "Hidden point")},
    Pair{"own_interval", QT_TRANSLATE_NOOP("Thing", "Own interval")},
    Pair{"drawing", QT_TRANSLATE_NOOP("Thing", "Drawing on a photo")},
    Pair{"stock", QT_TRANSLATE_NOOP("Thing", "Supply on hand")},
    Pair{"acceptance", QT_TRANSLATE_NOOP("Thing", "Acceptance")},
};

constexpr std::array fields = {
    Pair{"state", QT_TRANSLATE_NOOP("Thing", "mark")},
    Pair{"note", QT_TRANSLATE_NOOP("Thing", "note")},
    Pair{"reason", QT_TRANSLATE_NOOP("Thing", "reason")},
    Pair{"how", QT_TRANSLATE_NOOP("Thing", "how it was looked at")},
    Pair{"readings", QT_TRANSLATE_NOOP("Thing", "readings")},
    Pair{"grade", QT_TRANSLATE_NOOP("Thing", "grade")},
    Pair{"extent", QT_TRANSLATE_NOOP("Thing", "how much")},
    Pair{"defect", QT_TRANSLATE_NOOP("Thing", "defect")},
    Pair{"place", QT_TRANSLATE_NOOP("Thing", "place")},
    Pair{"action", QT_TRANSLATE_NOOP("Thing", "what was done")},
    Pair{"what", QT_TRANSLATE_NOOP("Thing", "what was done, in words")},
    Pair{"parts", QT_TRANSLATE_NOOP("Thing", "parts")},
    Pair{"cost", QT_TRANSLATE_NOOP("Thing", "cost")},
    Pair{"findings", QT_TRANSLATE_NOOP("Thing", "findings it closes")},
    Pair{"finished", QT_TRANSLATE_NOOP("Thing", "when it was finished")},
    Pair{"name", QT_TRANSLATE_NOOP("Thing", "name")},
    Pair{"fittings", QT_TRANSLATE_NOOP("Thing", "fittings")},
    Pair{"measures", QT_TRANSLATE_NOOP("Thing", "measures")},
    Pair{"ratings", QT_TRANSLATE_NOOP("Thing", "ratings")},
    Pair{"tires", QT_TRANSLATE_NOOP("Thing", "tires")},
    Pair{"wheels", QT_TRANSLATE_NOOP("Thing", "wheels")},
    Pair{"amount", QT_TRANSLATE_NOOP("Thing", "amount")},
    Pair{"months", QT_TRANSLATE_NOOP("Thing", "months")},
    Pair{"caption", QT_TRANSLATE_NOOP("Thing", "caption")},
    Pair{"shapes", QT_TRANSLATE_NOOP("Thing", "lines drawn")},
};

constexpr std::array reasons = {
    Pair{"written by a device that does not belong to this rig",
         QT_TRANSLATE_NOOP("Thing", "written by a device that does not belong to this rig")},
    Pair{"written after its device was revoked",
         QT_TRANSLATE_NOOP("Thing", "written after its device was revoked")},
    Pair{"carried for another device by one that is no owner",
         QT_TRANSLATE_NOOP("Thing", "carried for another device by one that is no owner")},
    Pair{"it belongs to another rig", QT_TRANSLATE_NOOP("Thing", "it belongs to another rig")},
    Pair{"a viewer writes nothing", QT_TRANSLATE_NOOP("Thing", "a viewer writes nothing")},
    Pair{"only an owner decides this", QT_TRANSLATE_NOOP("Thing", "only an owner decides this")},
    Pair{"a technician does not change the rig",
         QT_TRANSLATE_NOOP("Thing", "a technician does not change the rig")},
    Pair{"a mend of what is licensed needs a certificate number",
         QT_TRANSLATE_NOOP("Thing", "a mend of what is licensed needs a certificate number")},
};

template <std::size_t Size>
const char *found(const std::array<Pair, Size> &list, const std::string &name)
{
    for (const Pair &pair : list) {
        if (name == pair.first)
            return pair.second;
    }
    return nullptr;
}

QString plain(const std::string &slug) { return Voice::text(slug).replace(u'_', u' '); }

QString Words::type(const std::string &type)
{
    const char *words = found(types, type);
    return words != nullptr ? tr(words) : plain(type);
}

QString Words::quantity(const Voice &voice, const Value &value)
{
    const auto number = value["value"].asDouble();
    if (!number)
        return {};
    const auto dimension = findDimension(value["quantity"].asString().value_or(""));
    if (dimension)
        return voice.inUnit(*dimension, *number, value["read_in"].asString().value_or(""));
    return tr("%1 %2", "number, unit")
        .arg(voice.number(*number, 2), Voice::text(value["unit"].asString().value_or("")));
}

QString Words::slugged(const Voice &voice, const std::string &field, const std::string &slug)
{
    if (field == "state")
        return Voice::text(voice.texts.phrase("state_" + slug));
    if (field == "how")
        return Voice::text(voice.texts.phrase("how_" + slug));
    if (field == "action")
        return voice.mendAction(slug);
    const char *group = field == "defect"    ? "defects"
                        : field == "reason"  ? "reasons"
                        : field == "reading" ? "readings"
                        : field == "kind"    ? "kinds"
                                             : nullptr;
    if (group != nullptr) {
        const QString known = voice.word(group, slug);
        return known.isEmpty() ? Voice::text(slug) : known;
    }
    if (const auto time = parseLocal(slug))
        return voice.dateTime(*time);
    return Voice::text(slug);
}

QString Words::parts(const Voice &voice, const Value &value)
{
    const QString measured = quantity(voice, value);
    if (!measured.isEmpty()) {
        const QString reading = fieldValue(voice, "reading", value["reading"]);
        return value["reading"].isNull() ? measured : tr("%1 %2", "reading, value").arg(reading, measured);
    }
    QStringList list;
    for (const auto &[name, part] : value.map()) {
        if (!part.isNull())
            list << fieldLine(voice, name, part);
    }
    return list.join(QStringLiteral("; "));
}

} // namespace

QString fieldTitle(const Voice &voice, const std::string &field)
{
    if (const char *words = found(fields, field))
        return Words::tr(words);
    const QString known = voice.word("rig_members", field);
    return known.isEmpty() || known == Voice::text(field) ? plain(field) : known;
}

QString fieldValue(const Voice &voice, const std::string &field, const Value &value)
{
    if (value.isNull())
        return Words::tr("taken away", "value of a field");
    if (const auto truth = value.asBool())
        return *truth ? Words::tr("yes", "value of a field") : Words::tr("no", "value of a field");
    if (const auto whole = value.asInt())
        return voice.number(static_cast<double>(*whole), 0);
    if (const auto number = value.asDouble())
        return voice.number(*number, 2);
    if (const auto text = value.asString())
        return text->empty() ? Words::tr("nothing", "value of a field") : Words::slugged(voice, field, *text);
    if (value.isMap())
        return Words::parts(voice, value);
    QStringList list;
    for (const Value &one : value.list())
        list << (field == "fittings" && one.isString() ? voice.word("fittings", *one.asString())
                                                       : fieldValue(voice, "", one));
    return list.isEmpty() ? Words::tr("nothing", "value of a field") : list.join(QStringLiteral(", "));
}

QString fieldLine(const Voice &voice, const std::string &field, const Value &value)
{
    return Words::tr("%1: %2", "field, value").arg(fieldTitle(voice, field), fieldValue(voice, field, value));
}

QString thingTitle(const Voice &voice, const std::string &type, const Value &doc)
{
    const QString kind = Words::type(type);
    QStringList about;
    const auto point = doc["point"].asString();
    if (point && !point->empty())
        about << voice.point(*point);
    for (const char *field : {"name", "title", "kind", "action", "item"}) {
        const auto text = doc[field].asString();
        if (text && !text->empty())
            about << fieldValue(voice, field, doc[field]);
    }
    for (const char *field : {"at", "started", "opened", "added"}) {
        const auto time = parseLocal(doc[field].asString().value_or(""));
        if (time) {
            about << voice.date(*time);
            break;
        }
    }
    return about.isEmpty() ? kind
                           : Words::tr("%1: %2", "thing, what is known of it")
                                 .arg(kind, about.join(QStringLiteral(", ")));
}

QString asideReason(const std::string &reason)
{
    const char *words = found(reasons, reason);
    return words != nullptr ? Words::tr(words) : Voice::text(reason);
}

} // namespace snugwalk
