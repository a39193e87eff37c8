// SPDX-License-Identifier: Apache-2.0
// A sentence a slug. Translations need each whole.
#include "reason_text.hpp"

#include <cmath>
#include <map>

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Reason)
};

using Sentence = QString (*)(const Voice &voice, const Reason &reason);

QString dateOf(const Voice &voice, const Reason &reason)
{
    const auto date = parseDate(reason.detail);
    return date ? voice.date(*date) : Voice::text(reason.detail);
}

QString value(const Voice &voice, const Reason &reason)
{
    return reason.si ? voice.quantity(reason.dimension, *reason.si) : QString();
}

QString consequence(const Voice &, const Reason &reason)
{
    const std::map<std::string, QString> words = {
        {"W", Words::tr("Water gets in if it fails.")},      {"T", Words::tr("It matters on the road.")},
        {"F", Words::tr("Fire, gas or fumes if it fails.")}, {"H", Words::tr("It touches health.")},
        {"P", Words::tr("Someone can be hurt at camp.")},    {"K", Words::tr("It is a matter of looks.")}};
    const auto found = words.find(reason.detail);
    return found == words.end() ? Words::tr("It is a matter of comfort.") : found->second;
}

QString usage(const Voice &voice, const Reason &reason)
{
    const QString yearly = value(voice, reason);
    if (reason.detail == "season")
        return Words::tr("You drive about %1 a year, by your own seasons.").arg(yearly);
    if (reason.detail == "trips")
        return Words::tr("Your trips so far come to about %1 a year.").arg(yearly);
    if (reason.detail == "stated")
        return Words::tr("You said about %1 a year.").arg(yearly);
    if (reason.detail == "standing")
        return Words::tr("You said that it does not move.");
    return Words::tr("Nothing is known of how much you drive: %1 a year is taken.").arg(yearly);
}

const std::map<std::string, Sentence> &sentences()
{
    static const std::map<std::string, Sentence> table = {
        {"last_look", [](const Voice &v,
                         const Reason &r) { return Words::tr("Last looked at on %1.").arg(dateOf(v, r)); }},
        {"could_not_look",
         [](const Voice &v, const Reason &r) {
             return Words::tr("Could not be looked at on %1.").arg(dateOf(v, r));
         }},
        {"mended", [](const Voice &v,
                      const Reason &r) { return Words::tr("Since then: %1.").arg(v.mendAction(r.detail)); }},
        {"months",
         [](const Voice &v, const Reason &r) {
             return Words::tr("Every %n months, counted from %1.", nullptr,
                              static_cast<int>(r.si.value_or(0)))
                 .arg(dateOf(v, r));
         }},
        {"distance_used",
         [](const Voice &v, const Reason &r) { return Words::tr("%1 driven since.").arg(value(v, r)); }},
        {"usage", usage},
        {"wheel_fitted",
         [](const Voice &v, const Reason &r) {
             return Words::tr("A wheel was fitted on %1; look again from %2 on.")
                 .arg(dateOf(v, r), value(v, r));
         }},
        {"event",
         [](const Voice &v, const Reason &r) {
             return Words::tr("Because of: %1.").arg(v.word("events", r.detail));
         }},
        {"never_looked",
         [](const Voice &, const Reason &) { return Words::tr("Nobody has looked at it yet."); }},
        {"limit_left_out",
         [](const Voice &, const Reason &) { return Words::tr("A limit of zero was left out."); }},
        {"consequence", consequence},
        {"grade",
         [](const Voice &v, const Reason &r) {
             return Words::tr("Grade %1 of 5.").arg(v.number(r.si.value_or(0), 0));
         }},
        {"months_ahead",
         [](const Voice &v, const Reason &r) {
             return Words::tr("The next look is taken to be %1 months away.")
                 .arg(v.number(r.si.value_or(0), 1));
         }},
        {"chance",
         [](const Voice &v, const Reason &r) {
             return Words::tr("The chance that it fails before then is taken as %1.").arg(value(v, r));
         }},
        {"hold",
         [](const Voice &v, const Reason &r) {
             return r.detail == "grade_5" ? Words::tr("The worst grade on a point of the hold list.")
                                          : v.word("holds", r.detail);
         }},
        {"confirm_pending",
         [](const Voice &, const Reason &) { return Words::tr("It was mended; a look has to confirm it."); }},
    };
    return table;
}

} // namespace

QString reasonText(const Voice &voice, const Reason &reason)
{
    const auto found = sentences().find(reason.slug);
    return found == sentences().end() ? QString() : found->second(voice, reason);
}

} // namespace snugwalk
