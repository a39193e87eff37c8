// SPDX-License-Identifier: Apache-2.0
// What the core says in English, for people: some of its sentences have one of their own here.
#include <array>

#include "error_text.hpp"
#include "sync_words.hpp"

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(SyncFault)
public:
    static ErrorText of(const Error &error);
    static ErrorText ofStore(const Error &error, const QString &where);
};

bool says(const Error &error, const char *words) { return error.what.find(words) != std::string::npos; }

ErrorText Words::ofStore(const Error &error, const QString &where)
{
    if (says(error, "the store's folder is not there") || says(error, "the folder of the file is not there"))
        return {tr("The store is not there: %1").arg(where),
                tr("Put the stick in, or connect the drive, and exchange once more.")};
    if (says(error, "other bytes") || says(error, "another file of this name"))
        return {tr("The store holds another file of that name: %1").arg(where),
                tr("Nothing was overwritten. Look at the store, or use another one.")};
    if (error.code == Errc::Network)
        return {tr("The store cannot be reached: %1").arg(where),
                tr("Nothing is lost. Exchange again where there is a network.")};
    return {
        tr("The store or the disk refused: %1").arg(where),
        tr("Nothing is lost. See that it is there, has room and may be written to, then exchange again.")};
}

ErrorText Words::of(const Error &error)
{
    const QString where = Voice::text(error.where.empty() ? error.what : error.where);
    if (says(error, "a word is not as printed"))
        return {tr("A word is not as it was shown: %1").arg(where), tr("Look at this word again.")};
    if (says(error, "no words of ours") || says(error, "words are missing"))
        return {tr("Words are missing, or are of two sets."),
                tr("Type or paste all the words as they are shown.")};
    if (says(error, "no offer to share"))
        return {tr("These words are no offer to share a rig."), tr("Type the words of the owner's device.")};
    if (says(error, "no answer to the offer"))
        return {tr("These words are no answer to the code shown here."),
                tr("Show the code again, and answer it on the other device once more.")};
    if (says(error, "this offer is over"))
        return {tr("The code stood ten minutes and is over, or a clock is wrong."), tr("Show a new code.")};
    if (says(error, "only an owner's device"))
        return {tr("Only an owner's device may do this."), tr("Do it on an owner's device.")};
    if (says(error, "the last owner's device"))
        return {tr("This is the last owner's device."), tr("Enroll another owner first.")};
    if (says(error, "these words are not a key"))
        return {tr("These words are no key on paper."), tr("Type the 24 words of the paper.")};
    if (says(error, "has no rig of that key"))
        return {
            tr("This store has no rig of that key, or one with another mark: %1").arg(where),
            tr("Exchange once from a device that has the rig, or take another store. A rig with another mark "
               "was made up by somebody.")};
    if (says(error, "name that key an owner"))
        return {tr("Several rigs at this store name that key an owner: %1").arg(where),
                tr("Type the mark that stands beside the words.")};
    if (says(error, "no code is in this picture"))
        return {tr("No code was found in this picture."),
                tr("Take it straight on and near, without glare; or type the words.")};
    if (says(error, "no picture that can be read"))
        return {tr("This file is no picture that can be read: %1").arg(where),
                tr("Choose a JPEG or PNG picture.")};
    if (says(error, "shared already"))
        return {tr("This logbook shares that rig already, with other devices."),
                tr("Use the sharing that is there, or a logbook of its own.")};
    if (says(error, "nobody disagrees"))
        return {tr("This was settled meanwhile."), tr("Nothing has to be done.")};
    if (says(error, "has this name already"))
        return {tr("There is a store named %1 already.").arg(where), tr("Give it another name.")};
    if (says(error, "not a name for a store"))
        return {tr("The store needs a name of letters, digits and hyphens."), tr("Type one.")};
    if (error.code == Errc::InvalidInput && (says(error, "address") || says(error, "https")))
        return {tr("This address cannot be used."),
                tr("Write it as https://host/folder/, without a user or a password in it.")};
    if (says(error, "no longer among those that differ"))
        return {tr("This was settled meanwhile."), tr("Nothing has to be done.")};
    if (error.where == "until")
        return {tr("This is no date: %1").arg(Voice::text(error.what)), tr("Write it as 2027-03-31.")};
    if (error.code == Errc::Io || error.code == Errc::Network || says(error, "the store"))
        return ofStore(error, where);
    return errorText(error);
}

} // namespace

QVariantMap syncFault(const Error &error)
{
    const ErrorText text = Words::of(error);
    return {{QStringLiteral("what"), text.what}, {QStringLiteral("act"), text.act}};
}

} // namespace snugwalk
