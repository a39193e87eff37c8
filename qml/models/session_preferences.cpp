// SPDX-License-Identifier: Apache-2.0
// What the person sets, and its effect on words and units.
#include <algorithm>

#include "session.hpp"

namespace snugwalk {
namespace {

// The system's own locale where it speaks the language: its decimal sign is the one people expect.
QLocale localeFor(const QString &language, bool still)
{
    const QLocale wanted(language);
    const QLocale own = QLocale::system();
    return !still && own.language() == wanted.language() ? own : wanted;
}

} // namespace

void Session::keepPreferences()
{
    if (m_parts.preferencesFile.isEmpty())
        return;
    m_worker->runBeside(
        [file = m_parts.preferencesFile, kept = m_preferences] { writePreferences(file, kept); });
}

QVariantList Session::languages() const
{
    QVariantList all;
    for (const auto &[slug, name] : m_parts.languages)
        all.append(QVariantMap{{QStringLiteral("slug"), QString::fromStdString(slug)},
                               {QStringLiteral("name"), QString::fromStdString(name)}});
    return all;
}

void Session::speakAgain()
{
    auto voice = std::make_shared<Voice>(*m_shown.voice);
    Result<Texts> texts = m_parts.texts(m_preferences.language.toStdString());
    if (texts)
        m_words = std::move(texts).value();
    voice->texts = m_shown.history() == nullptr ? m_words : m_words.withOwn(m_shown.history()->own);
    voice->locale = localeFor(m_preferences.language, m_parts.still);
    voice->units = m_preferences.units;
    if (m_parts.speak)
        m_parts.speak(m_preferences.language);
    m_shown.voice = std::move(voice);
    m_position->speak(m_shown.voice);
    showAll();
    Q_EMIT languageChanged();
    Q_EMIT snapshotChanged();
}

void Session::adopt(std::shared_ptr<const Snapshot> snapshot)
{
    const bool hadOwn = m_shown.history() != nullptr && !m_shown.history()->own.added.empty();
    m_shown.snapshot = std::move(snapshot);
    const bool hasOwn = m_shown.history() != nullptr && !m_shown.history()->own.added.empty();
    if (!hadOwn && !hasOwn)
        return;
    // the owner's points speak with the catalogue's
    auto voice = std::make_shared<Voice>(*m_shown.voice);
    voice->texts = hasOwn ? m_words.withOwn(m_shown.history()->own) : m_words;
    m_shown.voice = std::move(voice);
    m_position->speak(m_shown.voice);
}

QString Session::units() const
{
    return m_preferences.units == UnitSystem::Us ? QStringLiteral("us") : QStringLiteral("si");
}

void Session::setUnits(const QString &units)
{
    m_preferences.units = units == QStringLiteral("us") ? UnitSystem::Us : UnitSystem::Si;
    keepPreferences();
    speakAgain();
    Q_EMIT preferencesChanged();
}

void Session::setTheme(const QString &theme)
{
    m_preferences.theme = theme;
    keepPreferences();
    Q_EMIT preferencesChanged();
}

void Session::setGloves(bool gloves)
{
    m_preferences.gloves = gloves;
    keepPreferences();
    Q_EMIT preferencesChanged();
}

void Session::setLanguage(const QString &language)
{
    if (language == m_preferences.language)
        return;
    m_preferences.language = language;
    keepPreferences();
    speakAgain();
}

void Session::setPerson(const QString &person)
{
    m_preferences.person = person.trimmed();
    keepPreferences();
    Q_EMIT preferencesChanged();
    Q_EMIT languageChanged(); // the footer names the person
}

bool Session::canSound() const { return m_parts.feedback != nullptr && m_parts.feedback->canSound(); }
bool Session::canBuzz() const { return m_parts.feedback != nullptr && m_parts.feedback->canBuzz(); }

void Session::setSound(bool sound)
{
    m_preferences.sound = sound;
    keepPreferences();
    Q_EMIT preferencesChanged();
    cue(Cue::Written); // so that one hears what was chosen
}

void Session::setBuzz(bool buzz)
{
    m_preferences.buzz = buzz;
    keepPreferences();
    Q_EMIT preferencesChanged();
    cue(Cue::Written);
}

void Session::cue(Cue cue)
{
    if (m_preferences.sound && canSound())
        m_parts.feedback->sound(cue);
    if (m_preferences.buzz && canBuzz())
        m_parts.feedback->buzz(cue);
}

void Session::setTextScale(double scale)
{
    m_preferences.textScale = std::clamp(scale, 1.0, 2.0);
    keepPreferences();
    Q_EMIT preferencesChanged();
}

} // namespace snugwalk
