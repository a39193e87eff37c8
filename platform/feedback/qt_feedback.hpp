// SPDX-License-Identifier: Apache-2.0
// Tones by Qt Multimedia, the buzz by the device. Nothing of it is loaded before the first tone.
#pragma once

#include <array>
#include <memory>

#include "feedback_source.hpp"

namespace snugwalk {

class QtFeedback final : public FeedbackSource {
public:
    QtFeedback();
    ~QtFeedback() override;
    [[nodiscard]] bool canSound() const override;
    [[nodiscard]] bool canBuzz() const override;
    void sound(Cue cue) override;
    void buzz(Cue cue) override;

private:
    struct Player;

    std::array<std::unique_ptr<Player>, 2> m_players; ///< by cue
};

} // namespace snugwalk
