// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

/**
 * What a pull test says, made linear around some wood.
 *
 * @param test id of the test
 * @param residual ln of the movement measured, base taken off, over the movement predicted [1]
 * @param byLnMoe change of ln of the predicted movement with ln of the modulus of each segment [1],
 *     shape (segments)
 * @param byStartReading the same with the error of its start caliper [1/m], shape (segments)
 * @param byEndReading the same with the error of its end caliper [1/m], shape (segments)
 * @param noiseVariance variance of the residual from reading force and movement [1]
 */
record PullObservation(
    String test,
    double residual,
    double[] byLnMoe,
    double[] byStartReading,
    double[] byEndReading,
    double noiseVariance) {}
