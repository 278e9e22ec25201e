package io.pitchwatch.settling;

/** The two angles of the floor. */
enum LeanAxis {
  ROLL {
    @Override
    double angleRad(MinuteValue minute) {
      return minute.rollRad();
    }

    @Override
    double limitRad(LeanLimit limit) {
      return limit.rollRad();
    }
  },
  PITCH {
    @Override
    double angleRad(MinuteValue minute) {
      return minute.pitchRad();
    }

    @Override
    double limitRad(LeanLimit limit) {
      return limit.pitchRad();
    }
  };

  abstract double angleRad(MinuteValue minute);

  abstract double limitRad(LeanLimit limit);
}
