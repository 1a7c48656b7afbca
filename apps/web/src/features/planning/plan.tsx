const Plan = () => null;

export default Plan;
