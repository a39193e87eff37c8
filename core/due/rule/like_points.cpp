// SPDX-License-Identifier: Apache-2.0
// Each point of a class told once, and the sums of the others.
#include "due/rule/like_points.hpp"

#include <algorithm>

#include "due/rule/life_rule.hpp"

namespace snugwalk {
namespace {

constexpr double likeWeight = 0.5;

} // namespace

const LikeLives &LikePoints::seenOf(const Point &point)
{
    const auto [kept, isNew] = m_seen.try_emplace(point.slug);
    if (isNew) {
        if (const auto lives = LifeRule::livesOf(m_lines, point, m_index.of(point.slug)))
            kept->second = likeLives(*lives, severityOf(point), failingOf(point));
    }
    return kept->second;
}

LikeLives LikePoints::of(const Point &point)
{
    LikeLives all;
    for (const auto &[name, slugs] : m_catalogue.likes()) {
        if (std::find(slugs.begin(), slugs.end(), point.slug) == slugs.end())
            continue;
        for (const std::string &slug : slugs) {
            if (slug != point.slug)
                all.add(seenOf(*m_catalogue.find(slug)), likeWeight);
        }
    }
    return all;
}

} // namespace snugwalk
