// SPDX-License-Identifier: Apache-2.0
// Rows of the factor from the top; solving forward, then backward.
#include "due/life/symmetric_matrix.hpp"

#include <cmath>

#include "base/contract.hpp"

namespace snugwalk {

std::optional<CholeskyFactor> CholeskyFactor::of(const SymmetricMatrix &matrix)
{
    constexpr double leastLeft = 1e-11;
    SymmetricMatrix lower(matrix.size());
    for (std::size_t i = 0; i < matrix.size(); ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            double left = matrix(i, j);
            for (std::size_t k = 0; k < j; ++k)
                left -= lower(i, k) * lower(j, k);
            if (j < i)
                lower(i, j) = left / lower(j, j);
            else if (left > leastLeft * matrix(i, i) && std::isfinite(left)) // false for NaN
                lower(i, i) = std::sqrt(left);
            else
                return std::nullopt;
        }
    }
    return CholeskyFactor(std::move(lower));
}

std::vector<double> CholeskyFactor::solve(std::span<const double> right) const
{
    const std::size_t n = m_lower.size();
    SNUG_ASSERT(right.size() == n);
    std::vector<double> x(right.begin(), right.end());
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t k = 0; k < i; ++k)
            x[i] -= m_lower(i, k) * x[k];
        x[i] /= m_lower(i, i);
    }
    for (std::size_t i = n; i-- > 0;) {
        for (std::size_t k = i + 1; k < n; ++k)
            x[i] -= m_lower(k, i) * x[k];
        x[i] /= m_lower(i, i);
    }
    return x;
}

std::vector<double> CholeskyFactor::inverse() const
{
    const std::size_t n = m_lower.size();
    std::vector<double> all;
    all.reserve(n * n);
    for (std::size_t i = 0; i < n; ++i) {
        std::vector<double> unit(n, 0.0);
        unit[i] = 1.0;
        const std::vector<double> column = solve(unit);
        all.insert(all.end(), column.begin(), column.end());
    }
    return all;
}

} // namespace snugwalk
