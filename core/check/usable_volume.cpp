#include "core/check/usable_volume.h"

namespace wardchalk {

namespace {

/// A volume to make up to is told to 0.1 mL below 10 mL, from there in whole mL (R19; common practice, no
/// source).
Number stepOf(const Number& mL) { return mL < Number(10) ? Number::ratio(1, 10) : Number(1); }

}  // namespace

Number roundedUpVolume(const Number& mL) { return (mL / stepOf(mL)).ceil() * stepOf(mL); }

Number roundedDownVolume(const Number& mL) { return (mL / stepOf(mL)).floor() * stepOf(mL); }

}  // namespace wardchalk
