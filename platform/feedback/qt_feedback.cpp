// SPDX-License-Identifier: Apache-2.0
// A sink a cue, fed from memory.
#include "feedback/qt_feedback.hpp"

#include <QAudioFormat>
#include <QAudioSink>
#include <QBuffer>
#include <QMediaDevices>

#include "feedback/device_buzz.hpp"
#include "feedback/tones.hpp"

namespace snugwalk {
namespace {

QAudioFormat toneFormat()
{
    QAudioFormat format;
    format.setSampleRate(toneRate);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Int16);
    return format;
}

QByteArray bytesOf(Cue cue)
{
    const auto samples = tone(cue);
    return {reinterpret_cast<const char *>(samples.data()),
            static_cast<qsizetype>(samples.size() * sizeof(samples.front()))};
}

} // namespace

struct QtFeedback::Player {
    explicit Player(Cue cue) : sink(QMediaDevices::defaultAudioOutput(), toneFormat())
    {
        buffer.setData(bytesOf(cue));
        buffer.open(QIODevice::ReadOnly);
    }

    void play()
    {
        sink.stop(); // a fast row of marks is one tick, not an echo
        buffer.seek(0);
        sink.start(&buffer);
    }

    QBuffer buffer;
    QAudioSink sink;
};

QtFeedback::QtFeedback() = default;
QtFeedback::~QtFeedback() = default;

bool QtFeedback::canSound() const { return !QMediaDevices::defaultAudioOutput().isNull(); }
bool QtFeedback::canBuzz() const { return deviceCanBuzz(); }

void QtFeedback::sound(Cue cue)
{
    auto &player = m_players[cue == Cue::Written ? 0 : 1];
    if (!player)
        player = std::make_unique<Player>(cue);
    player->play();
}

void QtFeedback::buzz(Cue cue) { deviceBuzz(cue); }

} // namespace snugwalk
