// SPDX-License-Identifier: Apache-2.0
// Loops over many numbers may use wider vectors where the processor has them.
#pragma once

// Chosen when the program starts; without fused steps the arithmetic stays the same, number by number.
// Sanitizers do not survive the choosing.
#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__) && !defined(__SANITIZE_ADDRESS__) &&     \
    !defined(__SANITIZE_THREAD__)
#define SNUG_WIDE __attribute__((target_clones("avx2", "default")))
#else
#define SNUG_WIDE
#endif
