/** Written by src/cli/survey.ts from the data set named in survey.ts; do not edit by hand. */
export const surveyFigures = {
  "women": {
    "count": 1986,
    "measures": {
      "neck-base": {
        "mean": 371.162,
        "deviation": 19.658,
        "least": 302,
        "percentile1": 329,
        "percentile5": 340,
        "percentile50": 370,
        "percentile95": 405,
        "percentile99": 423,
        "most": 457
      },
      "shoulder": {
        "mean": 135.405,
        "deviation": 10.274,
        "least": 107,
        "percentile1": 113.85,
        "percentile5": 120,
        "percentile50": 135,
        "percentile95": 153,
        "percentile99": 160.15,
        "most": 175
      },
      "front-waist": {
        "mean": 355.136,
        "deviation": 23.945,
        "least": 289,
        "percentile1": 304,
        "percentile5": 317,
        "percentile50": 355,
        "percentile95": 396,
        "percentile99": 413,
        "most": 432
      },
      "back-waist": {
        "mean": 425.403,
        "deviation": 26.389,
        "least": 345,
        "percentile1": 364.85,
        "percentile5": 384,
        "percentile50": 424.5,
        "percentile95": 470,
        "percentile99": 494.15,
        "most": 532
      }
    },
    "correlation": [
      [
        1,
        0.123752,
        0.401377,
        0.466484
      ],
      [
        0.123752,
        1,
        0.20607,
        0.203193
      ],
      [
        0.401377,
        0.20607,
        1,
        0.609496
      ],
      [
        0.466484,
        0.203193,
        0.609496,
        1
      ]
    ],
    "cholesky": [
      [
        1,
        0,
        0,
        0
      ],
      [
        0.123752,
        0.992313,
        0,
        0
      ],
      [
        0.401377,
        0.15761,
        0.90225,
        0
      ],
      [
        0.466484,
        0.146591,
        0.4424,
        0.751789
      ]
    ]
  },
  "men": {
    "count": 4082,
    "measures": {
      "neck-base": {
        "mean": 434.596,
        "deviation": 25.674,
        "least": 350,
        "percentile1": 380.81,
        "percentile5": 395,
        "percentile50": 433,
        "percentile95": 479,
        "percentile99": 502,
        "most": 545
      },
      "shoulder": {
        "mean": 149.776,
        "deviation": 10.513,
        "least": 113,
        "percentile1": 125,
        "percentile5": 133,
        "percentile50": 150,
        "percentile95": 167,
        "percentile99": 175,
        "most": 185
      },
      "front-waist": {
        "mean": 387.643,
        "deviation": 29.349,
        "least": 293,
        "percentile1": 324,
        "percentile5": 342,
        "percentile50": 386,
        "percentile95": 438,
        "percentile99": 459.19,
        "most": 494
      },
      "back-waist": {
        "mean": 477.612,
        "deviation": 27.728,
        "least": 383,
        "percentile1": 415,
        "percentile5": 433,
        "percentile50": 477,
        "percentile95": 524,
        "percentile99": 548.19,
        "most": 598
      }
    },
    "correlation": [
      [
        1,
        0.037657,
        0.427352,
        0.43686
      ],
      [
        0.037657,
        1,
        0.197337,
        0.17837
      ],
      [
        0.427352,
        0.197337,
        1,
        0.611928
      ],
      [
        0.43686,
        0.17837,
        0.611928,
        1
      ]
    ],
    "cholesky": [
      [
        1,
        0,
        0,
        0
      ],
      [
        0.037657,
        0.999291,
        0,
        0
      ],
      [
        0.427352,
        0.181373,
        0.885705,
        0
      ],
      [
        0.43686,
        0.162034,
        0.446928,
        0.763645
      ]
    ]
  }
};
